import type { Case, Reading } from '@evenbore/contract'
import { toPascal } from '../units/pressure.ts'
import type { About } from './targets.ts'
import { CAUSE_WORDS, FAULT_WORDS } from './words.ts'

/** The thing explained, in words. */
export function sayAbout(about: About): string {
  if (about.cause !== undefined) return CAUSE_WORDS[about.cause]
  const fault = FAULT_WORDS[about.fault!]
  if (about.cylinders === undefined && about.cylinder === undefined) return `${fault} at one of the cylinders`
  return about.cylinders !== undefined ? `${fault} (${about.cylinders.join(' and ')})` : `${fault} in ${about.cylinder}`
}

/** Row for what is believed before any reading. */
export function sayPrior(about: About): string {
  const words = sayAbout(about)
  return `Before any reading ${words} is as common as the tables and this engine's past say.`
}

/** Row for what only the readings together say. */
export function sayTogether(decibans: number): string {
  return decibans >= 0 ? 'The readings say more together than each alone.' : 'The readings overlap: part of what each says is the same.'
}

/** Row for one reading, or repeats of one. */
export function sayReading(given: Case, readings: readonly number[], decibans: number, about: About): string {
  const first = given.readings[readings[0]!]!
  const strength = Math.abs(decibans) >= 10 ? 'speaks strongly' : Math.abs(decibans) >= 5 ? 'speaks' : 'speaks a little'
  const tests = new Set(readings.map((r) => kindOf(given.readings[r]!)))
  if (tests.size > 1 && 'cylinder' in first) return `All that was read on ${first.cylinder} ${strength} ${decibans >= 0 ? 'for' : 'against'} ${sayAbout(about)}.`
  return `${capital(nameOf(first, readings.length, given))} ${strength} ${decibans >= 0 ? 'for' : 'against'} ${sayAbout(about)}.`
}

const kindOf = (r: Reading): string => JSON.stringify([r.test, 'wet' in r && r.wet, 'running' in r && r.running, 'snap' in r && r.snap])

const round = (x: number): string => String(Math.round(x * 10) / 10)

function nameOf(r: Reading, times: number, given: Case): string {
  const again = times > 1 ? ` (${times} readings)` : ''
  switch (r.test) {
    case 'compression': return `${r.wet ? 'wet reading' : r.snap ? 'compression in a snap of the throttle' : r.running ? 'running compression' : 'compression'} ${round(r.pressure.value)} ${r.pressure.unit} on ${r.cylinder}${again}`
    case 'leakage': {
      const heard = Object.entries(r.heard ?? {}).filter(([, level]) => (level ?? 0) >= 2).map(([place]) => place)
      const supply = r.supply ?? (r.session === undefined ? given : given.sessions?.[r.session])?.leakageTester?.supply
      const lost = r.percent ?? (r.held === undefined || supply === undefined ? undefined : 100 * (1 - toPascal(r.held) / toPascal(supply)))
      return `leakage${lost === undefined ? '' : ` of ${round(lost)} percent`} on ${r.cylinder}${heard.length > 0 ? `, heard at ${heard.join(' and ')}` : ''}${again}`
    }
    case 'plug': return `the ${r.appearance} plug of ${r.cylinder}${again}`
    case 'power-balance': return `a drop of ${round(r.rpmDrop)} rpm with ${r.cylinder} off${again}`
    case 'vacuum': return `the vacuum gauge (${r.pattern}${r.reading === undefined ? '' : ` at ${round(r.reading.value)} ${r.reading.unit}`})${again}`
    case 'coolant-gas': return `${r.present ? 'gas' : 'no gas'} in the coolant${again}`
    case 'borescope': return `the borescope in ${r.cylinder} (${r.seen.join(', ')})${again}`
    case 'clearance': return `the ${r.valve} clearance of ${r.cylinder} (${r.state})${again}`
    case 'valve-lift': return `the ${r.valve} lift of ${r.cylinder}${again}`
    case 'cooling-pressure': return `the cooling pressure test${again}`
    case 'observation': return `${r.present === false ? 'no ' : ''}${r.code.replaceAll('-', ' ')}${r.cylinder === undefined ? '' : ` on ${r.cylinder}`}${again}`
    case 'cranking-current': return `the cranking current${again}`
  }
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
