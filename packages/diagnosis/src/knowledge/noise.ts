import type { Place } from './faults.ts'
import { FROM_MEMORY, ROUGH_CALCULATION, entry } from './entry.ts'

/** How readings scatter, and how they go badly wrong. Spreads are standard deviations of a natural logarithm unless said. */
export const noise = {
  sisters: entry(0.016, FROM_MEMORY, 'Sound sister cylinders differ by about 2 percent.'),
  repeatability: entry(0.01, FROM_MEMORY, 'The same cylinder read twice differs by about 1 percent.'),
  lossDispersion: entry(0.32, ROUGH_CALCULATION, 'The same hole costs more or less pressure when cranking than physics says: speed, oil film, heat.'),
  lossDispersionUnknownSize: entry(0.5, FROM_MEMORY, 'The same when displacement is unknown.'),
  seatedBadly: entry({ chance: 0.008, heldByHand: 0.06, shift: 0.2, spread: 0.15 }, 'from memory: errors of a badly seated adaptor go downward only', 'Adaptor not seated: the reading is low by about a fifth. Chance where it is screwed in, and where it is held into the hole by hand.'),
  wrongAgain: entry(0.05, FROM_MEMORY, 'Of dry readings that are wrong, the part whose reading with oil is wrong by as much: an adaptor that leaks each time.'),
  drySeat: entry([[0.12, 0.004], [0.25, 0.005], [0.45, 0.002]] as ReadonlyArray<readonly [number, number]>, 'from memory: errors of a badly seated adaptor go downward only', 'The adaptor leaked at the dry reading and not at the wet one: loss (logarithm) and chance. The same mistake makes the dry reading low and the rise high.'),
  swapped: entry({ dry: 0.006, wet: 0.004, leakage: 0.004 }, 'from memory: noted from top to bottom and tested in another order', 'Two cylinders next to each other noted the wrong way round, in the dry round, in the one with oil or at the leakage test: chance of each for an engine.'),
  dropped: entry({ tight: 0.3, shift: 0.3, spread: 0.25 }, 'from memory: a leaking adaptor only takes away', 'A reading that did not hold for ten seconds: now and then right all the same, mostly low by about a quarter, so it bounds from below only.'),
  unreleased: entry({ chance: 0.01, firstCarried: 0.95, firstByChance: 0.05, stoodHigher: 0.45 }, 'from memory; that readings then never fall: counting of orders', 'Gauge not released between cylinders, before any reading; its first stroke stands at this part of the reading before, or above. A released gauge does that by chance, or an unreleased one does not, this often. For the rise with oil: how far the needle may have stood above the cylinder (sd of a logarithm).'),
  sag: entry({ chances: [[0, 0.975], [0.01, 0.01], [0.02, 0.01], [0.035, 0.005]] as ReadonlyArray<readonly [number, number]>, oddChance: 0.15, oddRange: 1.2, wrongChance: 0.05, wrongSpread: 0.15 }, 'from memory: rough cranking calculation, 160 rpm reads 6 to 8 percent below 200; a tired battery uses up the ten percent', 'What each cranking costs the reading after it (logarithm), and how often: a good battery nothing to speak of, a tired one a tenth in a test of four. Chance that a cylinder is low besides, over how wide a range (logarithm); chance that a repeat went wrong, and how far it may then be away.'),
  firstStroke: entry({ perLoss: 0.12, spread: 0.05, perLossSpread: 0.2, saysNothing: 0.5 }, ROUGH_CALCULATION, 'First stroke over final pressure, against the sisters (logarithm): a leak that costs pressure lets it stand still after fewer strokes, by this part of what it costs; spread, and spread for what it costs. The volume of hose and gauge sets most of the ratio, for all alike: little weight, and a density that it always has (says nothing).'),
  anythingElse: entry({ chance: 0.003, shift: 0.35, spread: 0.5 }, 'from memory: what goes wrong with a gauge mostly takes away', 'Wrong cylinder noted, misread, a valve core that leaks: the reading says little, and is low rather than high.'),
  crankingLossPerLeak: entry(92.6, ROUGH_CALCULATION, 'Loss of logarithmic pressure for each mm2 of leak per cm3 of displacement at 200 rpm (0.86 mm2 costs 18 percent on 400 cm3).'),
  unknownDisplacementCm3: entry(420, FROM_MEMORY, 'Displacement of one cylinder when bore and stroke are not known.'),
  belowFirstMark: entry({ below: 0.8, spread: 1 }, FROM_MEMORY, 'A reading of nothing says "below the first mark": how far below the smallest error, as logarithm.'),
  additivePa: entry(6000, FROM_MEMORY, 'Smallest error of any compression gauge, as a standard deviation in pascal.'),
} as const

/** The leakage test. */
export const leakageTest = {
  healthyLeak: entry({ median: 0.3, spread: 0.45, wornFrom: 0.75, sharpness: 10 }, 'common practice, no source: 0 to 10 percent lost is good, 10 to 20 usable, 20 to 30 worn, over 30 repair', 'Healthy leak of an engine\'s cylinders, mm2 on 400 cm3: 4 percent lost; as likely as not called worn where all lose 25 percent, and the more so the more they lose.'),
  sisters: entry(0.28, FROM_MEMORY, 'Healthy leaks of sisters differ, seepage apart (sd of logarithm).'),
  percentNoise: entry(2.5, 'from memory: two class 1.6 gauges of 100 psi give about 3 points at 60 of 80', 'Standard deviation of the percentage.'),
  repeatsApart: entry(14, 'from memory: four standard deviations of the difference of two', 'Leakage of one cylinder, tested twice in the same way, that differs by more points is not one leak read twice: one reading is wrong, or a valve hangs now and then.'),
  offTop: entry({ chance: 0.008, from: 88, loudMm2: 20 }, 'common practice, no source: loud at one port and over 90 percent lost while compression is normal', 'The piston was off the top: a valve stood open, nearly all is lost, loud at intake or exhaust. Chance, least percent, leak heard.'),
  seepage: entry({
    crankcase: [[0.14, 0.07], [0.28, 0.025]], exhaust: [[0.14, 0.02], [0.28, 0.006]], intake: [[0.14, 0.02], [0.28, 0.006]],
  } as Readonly<Partial<Record<Place, ReadonlyArray<readonly [number, number]>>>>, 'from memory; 10 to 20 percent lost is usable: common practice, no source',
  'Sound cylinders that leak a little more than their sisters, in the same place whichever test looks: leak (mm2 on 400 cm3) and chance.'),
  areaDispersion: entry(0.2, FROM_MEMORY, 'Discharge and piston position change the apparent leak (sd of logarithm).'),
  anythingElse: entry(0.01, FROM_MEMORY, 'Chance that the reading says nothing: hose leaking, wrong cylinder, misread.'),
} as const

/** Oil in the cylinder. */
export const oil = {
  tablespoonMl: entry(15, 'US Army TM 5-4210-230-14&P-1 addendum 2 (about a tablespoon); millilitres by definition', 'Oil used when the amount is not noted.'),
  partThatStays: entry({ mean: 0.55, spread: 0.25 }, ROUGH_CALCULATION, 'Part of the oil that takes up room while cranking.'),
  usualRatio: entry({ overhead: 8.5, side: 6 }, FROM_MEMORY, 'Compression ratio of a petrol engine whose own is not known, for the room that oil takes.'),
  sizeUnknown: entry(0.35, FROM_MEMORY, 'Spread of that room, as part of it, when displacement or ratio is not known.'),
  noise: entry(0.02, FROM_MEMORY, 'Scatter of a wet reading beyond that of a dry one.'),
  amountUnknown: entry(0.35, FROM_MEMORY, 'Spread of the amount of oil, as part of it, when nobody measured it.'),
  unevenRoom: entry(0.3, FROM_MEMORY, 'The room that oil takes differs by this part from cylinder to cylinder: it runs to one side, it is spat out.'),
  healthySeal: entry({ mean: 0.4, spread: 0.2 }, FROM_MEMORY, 'Part of a sound cylinder\'s small leak past the rings that oil closes.'),
  flatRings: entry(0.5, 'from memory: in a flat engine oil lies on one side', 'In a flat engine oil closes this part of what it would close in an upright one.'),
  sideValves: entry({ mean: 0.3, spread: 0.15 }, 'from memory: in a side-valve engine oil runs to the valves', 'Part of a valve leak that oil closes in a side-valve engine.'),
} as const
