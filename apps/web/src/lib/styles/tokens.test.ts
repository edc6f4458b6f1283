import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'

const css = readFileSync(new URL('./tokens.css', import.meta.url), 'utf8')

/** The colours that a block of tokens.css sets, by name. */
function colours(block: RegExp): Record<string, string> {
  const body = block.exec(css)?.[1]
  if (!body) throw new Error(`no block ${block}`)
  return Object.fromEntries([...body.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})/g)].map((found) => [found[1]!, found[2]!]))
}
const light = colours(/^:root \{([^}]*)\}/m)
const themes = {
  paper: light,
  'dark by the system': { ...light, ...colours(/:root:not\(\[data-theme\]\) \{([^}]*)\}/) },
  dark: { ...light, ...colours(/:root\[data-theme='dark'\] \{([^}]*)\}/) },
  sunlight: { ...light, ...colours(/:root\[data-theme='sunlight'\] \{([^}]*)\}/) },
}

/** Contrast ratio of two colours, WCAG 2.2, definitions "relative luminance" and "contrast ratio". */
function contrast(a: string, b: string): number {
  const luminance = (colour: string) => {
    const [r, g, blue] = [1, 3, 5].map((at) => {
      const channel = parseInt(colour.slice(at, at + 2), 16) / 255
      return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4
    })
    return 0.2126 * r! + 0.7152 * g! + 0.0722 * blue!
  }
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (high! + 0.05) / (low! + 0.05)
}

test('text can be read on every ground of every theme (WCAG 2.2, 1.4.3: 4.5 to 1)', () => {
  for (const [name, theme] of Object.entries(themes)) {
    for (const ink of ['ink', 'soft', 'accent'] as const)
      for (const ground of ['paper', 'sheet', 'faint'] as const) expect(contrast(theme[ink]!, theme[ground]!), `${name}: ${ink} on ${ground}`).toBeGreaterThanOrEqual(4.5)
    expect(contrast(theme['on-accent']!, theme['accent']!), `${name}: text on the filled button`).toBeGreaterThanOrEqual(4.5)
    expect(contrast(theme['ink']!, theme['band']!), `${name}: text on the band`).toBeGreaterThanOrEqual(4.5)
  }
})

test('edges of fields and the limit of the band can be seen (WCAG 2.2, 1.4.11: 3 to 1)', () => {
  for (const [name, theme] of Object.entries(themes)) {
    for (const ground of ['paper', 'sheet'] as const) expect(contrast(theme['edge']!, theme[ground]!), `${name}: edge on ${ground}`).toBeGreaterThanOrEqual(3)
    expect(contrast(theme['band-line']!, theme['paper']!), `${name}: limit on paper`).toBeGreaterThanOrEqual(3)
  }
})

test('dark is the same dark, chosen or by the system', () => {
  expect(themes.dark).toEqual(themes['dark by the system'])
})

test('in sunlight ink on paper has the most contrast there is', () => {
  expect(contrast(themes.sunlight['ink']!, themes.sunlight['paper']!)).toBeCloseTo(21, 5)
})
