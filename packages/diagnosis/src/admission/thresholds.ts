/** One number with what it means and where it comes from. */
interface Threshold {
  readonly value: number
  readonly basis: string
}

const memory = (value: number): Threshold => ({ value, basis: 'from memory' })
const practice = (value: number): Threshold => ({ value, basis: 'common practice, no source' })
/** A rough one-zone cranking calculation (402 cm3, ratio 9, 200 rpm): a trend. */
const rough = (value: number): Threshold => ({ value, basis: 'from memory: rough cranking calculation' })

/** The numbers by which admission judges. Every one has its basis. */
export const THRESHOLDS = {
  /** repeatability of one reading, standard deviation as a part of it */
  repeatability: memory(0.01),
  /** two readings of one cylinder disagree past so many standard deviations of their difference */
  repeatSds: { value: 2, basis: 'two standard deviations of a difference, about 95 percent' },
  /** an unstated resolution is at least this, psi */
  leastResolutionPsi: memory(1),
  /** readings all on multiples of so many marks were rounded */
  roundedTo: practice(5),
  roundedReadings: memory(4),
  /** the last stroke still added more than this part of the final pressure */
  lastStep: practice(0.02),
  /** fewest compression strokes */
  fewestStrokes: { value: 5, basis: 'US Army TM 5-4210-230-14&P-1 addendum 2: at least 5 compression strokes' },
  /** fewest readings in order whose steady fall or rise means something without another sign: 1 in 24 for four, 1 in 120 for five */
  orderedReadings: { value: 4, basis: '4! orders, one of them falling throughout' },
  orderedAlone: { value: 5, basis: '5! orders, one of them rising throughout' },
  /** a first stroke at least this part of the final pressure of the cylinder before was never released */
  firstOverPrevious: memory(0.95),
  /** typed air pressure against the standard one at the typed altitude, Pa */
  airDifferencePa: memory(3000),
  /** how near a ratio of readings must come to a ratio of units */
  unitRatioSlack: memory(0.12),
  unitRatioSlackOfAll: memory(0.3),
  /** a cylinder this far under its sisters is low; one this near them is normal */
  low: practice(0.15),
  normal: practice(0.08),
  /** percent lost by a tight cylinder */
  tightPercent: practice(12),
  leakyPercent: { value: 25, basis: 'FAA AC 43.13-1B par. 8-14b(5)(i)' },
  offTopPercent: practice(90),
  offTopDeg: memory(15),
  nothingLostPercent: memory(0.5),
  droop: memory(0.03),
  /** a wet reading more than this over the dry one has too much oil in it */
  wetTooHigh: rough(0.4),
  /** a control that rises at least this much, and as much as the suspect, says that oil took up room */
  controlRise: rough(0.05),
  controlMargin: memory(0.02),
  /** compression and leakage disagree by this factor */
  leakDisagreement: rough(2),
  leakDisagreementUnknownSize: memory(3),
  leakDisagreementLeast: memory(0.12),
  /** all low by this part of the expected low end while even */
  throttleShut: memory(0.8),
  /** but not by more than this part of it */
  throttleShutLeast: memory(0.35),
  throttleShutSpread: practice(0.1),
} as const satisfies Record<string, Threshold>
