// Runs before the first paint, so that a chosen theme does not flash. lib/styles/theme.svelte.ts writes what is read here.
try {
  const chosen = localStorage.getItem('evenbore.theme')
  if (chosen) document.documentElement.dataset.theme = chosen
} catch {
  /* storage refused: the system's choice stands */
}
