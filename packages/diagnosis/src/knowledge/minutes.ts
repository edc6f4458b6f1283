import { COMMON_PRACTICE, FROM_MEMORY, entry } from './entry.ts'

const LIST = FROM_MEMORY

/** Minutes of labour for each test; `each` for every cylinder, `once` to set up. */
export const minutes = {
  dry: entry({ once: 0, each: 1.5 }, LIST, 'Dry cranking compression.'),
  wet: entry({ once: 0, each: 2 }, LIST, 'Wet compression: oil in, crank again.'),
  leakage: entry({ once: 0, each: 5.5 }, LIST, 'Leakage with listening, 5 to 6 a cylinder.'),
  slackRocker: entry({ once: 0, each: 3 }, LIST, 'During leakage: slacken that rocker and listen again.'),
  wetLeakage: entry({ once: 0, each: 3 }, LIST, 'During leakage: oil and repeat.'),
  plug: entry({ once: 0, each: 0.5 }, FROM_MEMORY, 'Look at the plug that is out anyway.'),
  borescope: entry({ once: 0, each: 4 }, LIST, 'Borescope through the plug hole.'),
  current: entry({ once: 5, each: 0 }, LIST, 'Current trace while cranking, plugs in.'),
  vacuum: entry({ once: 4, each: 0 }, LIST, 'Vacuum gauge at idle.'),
  powerBalance: entry({ once: 6, each: 0 }, LIST, 'Power balance, all cylinders.'),
  clearance: entry({ once: 10, each: 2 }, LIST, 'Check clearances, before oil: 10 to 25.'),
  valveLift: entry({ once: 0, each: 6 }, LIST, 'Valve lift by dial, 3 a valve.'),
  coolingPressure: entry({ once: 12, each: 0 }, LIST, 'Cooling system under pressure.'),
  coolantGas: entry({ once: 5, each: 0 }, LIST, 'Combustion gas in the coolant, hot after load.'),
  running: entry({ once: 2, each: 4 }, LIST, 'Running compression and a snap.'),
  swapPlugAndLead: entry({ once: 0, each: 5 }, LIST, 'Swap plug and lead with a good cylinder.'),
  soap: entry({ once: 0, each: 2 }, LIST, 'During leakage: soap on plug thread and joint.'),
  pistonHeight: entry({ once: 0, each: 3 }, LIST, 'Piston height through the plug hole.'),
  byHand: entry({ once: 2.5, each: 0 }, LIST, 'Turn the engine by hand and feel each hump.'),
  oilAndWater: entry({ once: 2, each: 0 }, LIST, 'Dipstick, filler, header tank.'),
  askOil: entry({ once: 0.2, each: 0 }, LIST, 'Ask about oil use.'),
  smoke: entry({ once: 3, each: 0 }, LIST, 'Look at the smoke.'),
  breather: entry({ once: 2, each: 0 }, LIST, 'Look at the breather.'),
  runAndRetest: entry({ once: 12, each: 1.5 }, 'from memory; AC 43.13-1B par. 8-14b(5)(i): at least 3 minutes', 'Run, rap the stem, test again.'),
  swapGauge: entry({ once: 3, each: 1.5 }, LIST, 'Another gauge on one cylinder.'),
} as const

/** What a test is worth, and when to stop testing. */
export const stopping = {
  settled: entry(0.9, COMMON_PRACTICE, 'A cylinder counts as settled when its leading explanation has this probability.'),
  settledBlur: entry(0.2, FROM_MEMORY, 'How sharp that is (logarithm of the odds): a test that lifts .89 to .91 settles little.'),
  minutesPerBit: entry(8, FROM_MEMORY, 'What one bit is worth beyond the repairs it saves, in minutes of labour: being sure, and able to say why.'),
  minutesSettled: entry(30, FROM_MEMORY, 'What it is worth, in minutes of labour, that one explanation counts as settled.'),
  changeOver: entry(1, FROM_MEMORY, 'Minutes to lay one tool down and take up the next, whatever the test.'),
  comeback: entry(60, FROM_MEMORY, 'Minutes that a fault left in costs when the customer comes back.'),
  boiled: entry(180, 'common practice, no source: never run an engine that loses its water; amount from memory', 'Minutes that it costs more where coolant leaks: an engine that boiled has a warped head to be skimmed.'),
  traceSpread: entry(0.06, FROM_MEMORY, 'Scatter of relative compression from a current trace (sd of logarithm).'),
  traceUsable: entry(0.4, FROM_MEMORY, 'Chance that a current trace can be used.'),
  slowInTrace: entry({ shown: 0.85, slow: 0.93, other: 0.04 }, FROM_MEMORY, 'Chance that a current trace shows the cranking speed, and that it is slow then: of a starter or battery too slow, and otherwise.'),
  suggestions: entry(6, COMMON_PRACTICE, 'At most so many suggestions are listed.'),
} as const
