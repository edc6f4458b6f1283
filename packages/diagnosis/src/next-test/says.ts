import type { SuggestedTest } from '@evenbore/contract'
import { CAUSE_WORDS, FAULT_WORDS } from '../explain/words.ts'
import { CAUSES } from '../knowledge/causes.ts'
import { FAULTS } from '../knowledge/faults.ts'
import type { Inference } from '../model/posterior.ts'
import { somewhere } from '../model/somewhere.ts'

const FIRST: Readonly<Record<string, string>> = {
  'warm-up': 'warm the engine up, then ', 'run-engine': 'run the engine a few minutes, then ', 'swap-gauge': 'with another gauge, ',
  'set-clearances': 'set the clearances, then ', 'swap-plug-and-lead': 'swap plug and lead, then ',
}

const SIGNS: Readonly<Record<string, string>> = {
  'weak-by-hand': 'turn the engine by hand and feel each hump', 'bubbles-at-plug-thread': 'soap the plug thread', 'bubbles-at-joint': 'soap the head joint',
  'better-with-other-plug-and-lead': 'swap plug and lead with a good cylinder', 'piston-low-at-top': 'measure piston height at the top',
  'breather-smoke': 'look at the breather', 'oil-use-high': 'ask about oil use', 'smoke-white': 'look for white smoke', 'smoke-blue-throttle': 'look for blue smoke under throttle',
  'petrol-in-oil': 'smell the dipstick for petrol', 'smoke-black': 'look for black smoke',
  'water-in-oil': 'look at dipstick and filler for water', 'oil-in-water': 'look for oil in the header tank', 'spits-back': 'listen for spitting back',
}

/** Why a suggestion: the two likeliest explanations that stand against each other at its first cylinder, or in the whole engine; or a leak into the coolant. */
export function sayOpen(tests: readonly SuggestedTest[], { own, causes, space }: Inference): string {
  const [asks] = tests
  const groups = asks === undefined ? [] : Object.keys(space.knowledge.engineSigns[asks.code ?? asks.test]?.value.groups ?? {})
  const coolant = groups.length === 1 && groups[0] === 'coolant' ? somewhere(own, 'coolant', space.knowledge).any : 0
  if (coolant >= 0.005) return ` Open for the whole engine: a leak into the coolant at one of the cylinders (${Math.round(coolant * 100)} in 100).`
  // another gauge, or running compression, on one cylinder asks what all of them have in common
  const ofAll = (test: SuggestedTest): boolean => test.first === 'swap-gauge' || (test.running === true && test.cylinders?.length === 1)
  const cylinder = tests.find((test) => test.cylinders?.length && !ofAll(test))?.cylinders?.[0]
  const named: [string, number][] = cylinder === undefined
    ? CAUSES.map((cause, e) => [CAUSE_WORDS[cause], causes[e]!])
    : [...own[cylinder - 1]!].map((p, k) => [FAULT_WORDS[k === 0 ? 'sound' : FAULTS[k - 1]!], p])
  const [one, other] = named.sort((a, b) => b[1] - a[1]) as [[string, number], [string, number]]
  if (other[1] < 0.005) return ''
  return ` Open ${cylinder === undefined ? 'for the whole engine' : `at cylinder ${cylinder}`}: ${one[0]} (${Math.round(one[1] * 100)} in 100) or ${other[0]} (${Math.round(other[1] * 100)}).`
}

/** One suggested test in a technician's words, without a full stop. */
export function sayTest(test: SuggestedTest): string {
  const where = test.cylinders === undefined ? '' : test.cylinders.length === 1 ? ` on cylinder ${test.cylinders[0]}` : ` on cylinders ${test.cylinders.join(', ')}`
  const sentence = (test.first === undefined ? '' : FIRST[test.first]!) + nameOf(test) + where
  return sentence.charAt(0).toUpperCase() + sentence.slice(1)
}

function sameLists(a: readonly number[], b: readonly number[] = []): boolean {
  return a.length === b.length && a.every((x, i) => x === b[i])
}

function nameOf(test: SuggestedTest): string {
  const again = test.repeat === true ? ' again' : ''
  switch (test.test) {
    case 'compression':
      if (test.running === true) return test.snap === true ? 'compression in a snap of the throttle' : 'running compression'
      return `${test.wet === true ? 'wet' : 'dry'} compression${again}`
    case 'leakage': return test.rockersSlack !== undefined ? `leakage with the rockers ${sameLists(test.rockersSlack, test.cylinders) ? '' : `of ${test.rockersSlack.join(', ')} `}slack` : `${test.wet === true ? 'wet ' : ''}leakage${again}, listening at every point`
    case 'plug': return 'read the plugs'
    case 'clearance': return 'check the valve clearances'
    case 'valve-lift': return 'measure the valve lift'
    case 'power-balance': return 'power balance'
    case 'vacuum': return 'vacuum gauge at idle'
    case 'coolant-gas': return 'test the coolant for combustion gas'
    case 'cooling-pressure': return 'put the cooling system under pressure'
    case 'borescope': return 'borescope'
    case 'cranking-current': return 'record the cranking current'
    case 'observation': return SIGNS[test.code ?? ''] ?? `look for ${test.code}`
  }
}
