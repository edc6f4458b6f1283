/** What a person can choose: follow the system, or one of three. The value is read before the first paint by app.html. */
export const themes = ['auto', 'paper', 'dark', 'sunlight'] as const
export type Theme = (typeof themes)[number]

const KEY = 'evenbore.theme'

function stored(): Theme {
  try {
    const value = localStorage.getItem(KEY)
    return themes.find((theme) => theme === value) ?? 'auto'
  } catch {
    return 'auto'
  }
}

/** The theme of this device, as state: `theme.now`, `theme.choose('dark')`. */
class ThemeChoice {
  now = $state<Theme>(stored())

  choose(theme: Theme): void {
    this.now = theme
    if (theme === 'auto') delete document.documentElement.dataset['theme']
    else document.documentElement.dataset['theme'] = theme
    try {
      if (theme === 'auto') localStorage.removeItem(KEY)
      else localStorage.setItem(KEY, theme)
    } catch {
      // storage refused: the choice lasts until the page is closed
    }
  }
}

export const theme = new ThemeChoice()
