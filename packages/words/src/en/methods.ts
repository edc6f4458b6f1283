/** Where a figure or step comes from; texts are our own words. */
export interface MethodCard {
  readonly title: string
  readonly minutes: string
  readonly steps: readonly string[]
  readonly good: string
  readonly mind: readonly string[]
  readonly sources: readonly string[]
}
export type MethodName = 'compression' | 'wet' | 'leakage' | 'plug' | 'running' | 'power-balance' | 'vacuum' | 'coolant-gas' | 'borescope' | 'clearance' | 'valve-lift' | 'cooling-pressure' | 'observation' | 'cranking-current'

const PRACTICE = 'common practice, no source'
const MEMORY = 'from memory'

/** One screen for each test: what to do, what to mind, what a good number looks like, and who says so. The maker's procedure comes first. */
export const methods: Readonly<Record<MethodName, MethodCard>> = {
  compression: {
    title: 'Dry compression',
    minutes: 'about 1.5 minutes a cylinder',
    steps: ['Engine warm, battery strong.', 'All plugs out, throttle and choke held open.', 'Screw the gauge in by hand; release it.', 'Crank the same number of strokes for every cylinder, at least five or until the needle stays.', 'Note first stroke and final value; release the gauge each time.', 'Read the first cylinder again at the end.'],
    good: 'The spread matters more than the height. The engine’s own limit first; without one, the lowest within one tenth of the highest. A military manual for petrol engines asks that the lowest be at least 75 percent of the highest.',
    mind: ['A badly seated adaptor reads low, never high: trust the higher repeat.', 'A tired battery makes the later cylinders low.', 'Low everywhere with little spread: throttle shut, slow cranking, valve timing, or worn evenly.'],
    sources: ['Method and 75 percent: US Army TM 5-4210-230-14&P-1, addendum 2', `One tenth: ${PRACTICE}`, `Minutes: ${MEMORY}`],
  },
  wet: {
    title: 'Wet compression',
    minutes: 'about 2 minutes more a cylinder',
    steps: ['Petrol engines only.', 'Measure the oil: about a tablespoon in an ordinary cylinder, less in a small one.', 'Turn the engine over a few times to spread it, wait some minutes.', 'Read the low cylinder and one good sister as control, as many strokes as dry.', 'Expel the oil before the plugs go in.'],
    good: 'A clear rise that the control does not show points at the rings; no rise at valves, or at the gasket where two neighbours are low.',
    mind: ['Oil takes room: a small cylinder rises by that alone.', 'Flat engines: the oil lies on one side. Side valves: it runs to the valves.', 'Never in a diesel.'],
    sources: ['US Army TM 5-4210-230-14&P-1, addendum 2', 'Waiting: TM 5-1185', `Diesel: ${PRACTICE}`],
  },
  leakage: {
    title: 'Leakage',
    minutes: '5 to 6 minutes a cylinder',
    steps: ['Check that both gauges agree before connecting.', 'Piston exactly at top dead centre on compression; turning bar off.', '20 psi first; then slowly to the supply, usually 80.', 'Read supply and held, or the percentage.', 'Listen: intake, exhaust, oil filler, coolant, the plug hole beside, the joint.', 'If the piston passes the top, go back half a turn and come up again.', 'Bleed, then unscrew.'],
    good: 'Some air always passes the rings: judge against the sisters. More than a quarter lost is suspect, exactly a quarter is not; then run the engine and test again before condemning.',
    mind: ['A hiss at a neighbour is not the gasket while that neighbour’s valves stand open; slacken its rockers.', 'Over 90 percent lost and loud at one port: the piston was off the top.', '0 percent on several: the check valve is still in the hose.'],
    sources: ['25 percent, run and test again, method: FAA AC 43.13-1B par. 8-14 and p. 8-15', 'Listening points: US Army TM 5-3805-260-24'],
  },
  plug: {
    title: 'Plugs',
    minutes: '1 minute',
    steps: ['Lay the plugs out in the order of the cylinders as they come.', 'Note each as it looks, and whether the engine was driven at speed before.'],
    good: 'Grey to tan. Unleaded petrol may leave healthy plugs nearly white.',
    mind: ['Looks mean little until the engine was driven for some miles at speed.', 'One or two fouled: sticking valve or a lead. All: air cleaner or choke.', 'Steam-clean: coolant.'],
    sources: ['TM 10-3930-653-14&P par. 4-7', 'One or all: TM 5-4210-230-14&P-1', `Near white, steam-clean: ${MEMORY}`],
  },
  running: {
    title: 'Running compression',
    minutes: '4 minutes',
    steps: ['Engine idling on the others, plug lead earthed.', 'Read while idling; then snap the throttle and read again.'],
    good: 'About half of cranking at idle, about four fifths at the snap. Low: it does not fill; high: it does not empty.',
    mind: ['Well over half where all cranked low: throttle or choke was shut then, or the starter slow.', 'Check valve in the hose must be light; the hose must not touch the exhaust.'],
    sources: ['a trade article, not named: illustrative', `Against low cranking: ${MEMORY}`],
  },
  'power-balance': {
    title: 'Power balance',
    minutes: '6 minutes',
    steps: ['Fast idle, steady.', 'Silence one cylinder at a time, shortly, lead earthed.', 'Note the drop in speed for each.'],
    good: 'The drops are alike. The smallest drop is the weakest cylinder.',
    mind: ['Ignition and mixture faults look the same: good compression and no drop points there.'],
    sources: [`Petrol: ${MEMORY}`, 'Diesel, by loosening one line at a time: TM 5-3805-260-24 (never on a common rail)'],
  },
  vacuum: {
    title: 'Vacuum gauge',
    minutes: '4 minutes',
    steps: ['Engine warm, at idle, gauge on the manifold.', 'Watch how the needle moves, then read.'],
    good: 'Steady. About 1 inHg less for each 1,000 ft of height.',
    mind: ['Normal, then slowly falling: exhaust restricted.', 'Regular drops: a valve or the gasket. Drops now and then: sticking valve, mixture or plugs.'],
    sources: ['TM 10-3930-618-20 steps 5-7', `Height: ${PRACTICE}`],
  },
  'coolant-gas': {
    title: 'Gas in the coolant',
    minutes: '5 minutes, hot after load',
    steps: ['Cap off while cold; warm up under load.', 'Draw the air above the coolant through the fluid; watch its colour.'],
    good: 'No change.',
    mind: ['It does not say which cylinder, nor whether gasket or head.'],
    sources: [PRACTICE],
  },
  borescope: {
    title: 'Borescope',
    minutes: '4 minutes a cylinder',
    steps: ['Piston low in the bore.', 'Look at walls, crown, exhaust valve edge, intake valve.'],
    good: 'Even grey crown, cross marks of honing, round valve edges.',
    mind: ['Take it out before anything turns.'],
    sources: [PRACTICE],
  },
  clearance: {
    title: 'Valve clearances',
    minutes: '10 to 25 minutes',
    steps: ['Engine as cold or as warm as its maker asks.', 'Cylinder at top dead centre on compression.', 'Gauge intake and exhaust; note right, tight or loose.'],
    good: 'As the maker says. A tight one holds its valve open: setting it may be the whole repair.',
    mind: ['Before oil and before the head comes off.'],
    sources: ['Order of checks: TM 1-1500-204-23-1', `Minutes: ${MEMORY}`],
  },
  'valve-lift': {
    title: 'Valve lift',
    minutes: '3 minutes a valve',
    steps: ['Dial on the rocker or retainer.', 'Turn by hand through the whole lift.', 'Note the most; compare with the sisters, or in one cylinder alone with its other valve.'],
    good: 'Sisters alike; one manual allows 0.010 in.',
    mind: ['An intake that hardly opens reads a few psi and leaks nothing.'],
    sources: ['0.010 in: TM 5-3805-260-24'],
  },
  'cooling-pressure': {
    title: 'Cooling system under pressure',
    minutes: '10 to 15 minutes',
    steps: ['Engine cold, pump on the neck, up to the cap’s rating and no further.', 'Wait two minutes, note what was lost.', 'Look for wet plugs, oil, joints.'],
    good: 'Less than 2 psi lost in two minutes.',
    mind: ['Hoses and heater lose too: look before blaming the gasket.'],
    sources: ['2 psi in two minutes: a maker’s text, not named: illustrative'],
  },
  observation: {
    title: 'Seen, heard or felt',
    minutes: '0 to 3 minutes',
    steps: ['Turn by hand and feel each hump.', 'Dipstick, filler cap, header tank: water or petrol in oil, oil in water.', 'Smoke: blue under throttle, blue on the overrun, white, black.', 'Ask about oil use.'],
    good: 'Even humps, clean oil, no smoke when warm.',
    mind: ['What was looked for and not there is worth noting too.'],
    sources: ['Smoke: TM 5-4210-230-14&P-1 chart 21', `Minutes: ${MEMORY}`],
  },
  'cranking-current': {
    title: 'Cranking current',
    minutes: '5 minutes',
    steps: ['Plugs in, fuel and ignition dead.', 'Clamp on the starter lead; record a few seconds.', 'Mark cylinder 1 where a second probe can.'],
    good: 'Humps alike.',
    mind: ['It compares, it does not measure.'],
    sources: [PRACTICE],
  },
}
