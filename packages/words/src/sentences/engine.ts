import type { EngineSpecification } from '@evenbore/contract'
import type { Words } from '../en.ts'

/** An engine in a few words: "4 in line, petrol". */
export function engineWords(engine: Pick<EngineSpecification, 'layout' | 'cylinders' | 'fuel'>, words: Words): string {
  return `${engine.cylinders} ${words.tests.layouts[engine.layout]}, ${words.tests.fuels[engine.fuel]}`
}
