import type { EnteredReading } from '@evenbore/contract'

/** The screens of the bench: which test `?test=` opens, and what its compression readings are marked with. */
export const compressionKinds = {
  compression: {},
  wet: { wet: true },
  running: { running: true },
  snap: { running: true, snap: true },
} as const
export type CompressionKind = keyof typeof compressionKinds

/** Tests in the order in which they are usually done; the words come from the dictionary. */
export const testScreens = ['compression', 'wet', 'leakage', 'plug', 'clearance', 'observation', 'running', 'snap', 'power-balance', 'vacuum', 'coolant-gas', 'cooling-pressure', 'borescope', 'valve-lift', 'cranking-current'] as const
export type TestScreen = (typeof testScreens)[number]

/** The screen asked for in the address; dry compression where none or an unknown one is. */
export function testScreen(asked: string | null): TestScreen {
  return testScreens.find((name) => name === asked) ?? 'compression'
}

export function isCompression(test: TestScreen): test is CompressionKind {
  return test in compressionKinds
}

/** The screen on which a reading is taken; undefined for what is not taken by hand. */
export function screenOf(reading: EnteredReading): TestScreen | undefined {
  if (reading.test === 'compression') return reading.snap ? 'snap' : reading.running ? 'running' : reading.wet ? 'wet' : 'compression'
  return reading.test === 'cranking-current' ? undefined : reading.test
}
