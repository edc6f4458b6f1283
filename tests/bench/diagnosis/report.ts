import type { Measures } from './measures.ts'
import { isFaulty, measure } from './measures.ts'
import type { EngineScore } from './score.ts'
import type { Settling } from './settling.ts'
import type { Stage } from '../../simulator/stages.ts'

const COLUMNS: readonly [title: string, value: (measures: Measures) => string][] = [
  ['prec', (m) => two(m.precision)],
  ['recall', (m) => two(m.recall)],
  ['F1', (m) => three(m.f1)],
  ['top1', (m) => two(m.top1)],
  ['top2', (m) => two(m.top2)],
  ['logloss', (m) => three(m.logLoss)],
  ['Brier', (m) => three(m.brierSound)],
  ['ECE', (m) => three(m.calibrationError)],
  ['verdict', (m) => three(m.verdictBrier)],
  ['alarms', (m) => percent(m.falseAlarms)],
  ['cause', (m) => two(m.causeAccuracy)],
  ['found', (m) => two(m.causeFound)],
  ['bridgeP', (m) => two(m.bridgePrecision)],
  ['bridgeR', (m) => two(m.bridgeRecall)],
  ['blamed', (m) => two(m.blamedInBridge)],
]

export const LEGEND = `prec recall F1: cylinders called faulty (sound below .5) · top1 top2: fault of faulty cylinders, sound left out of the ranking · logloss: of the true state, all cylinders
Brier ECE: of sound · verdict: Brier of probabilityInside · alarms: healthy engines with a cylinder called faulty · cause: leading cause right · found: the same where there is one
bridgeP bridgeR: gasket between neighbours at .5 · blamed: sound cylinders beside a leaking gasket called faulty themselves`

/** One row a judge and stage. */
export function stageTable(scores: Readonly<Record<string, Readonly<Record<Stage, readonly EngineScore[]>>>>): string {
  const rows = Object.entries(scores).flatMap(([name, stages]) =>
    Object.entries(stages)
      .filter(([, list]) => list.length > 0)
      .map(([stage, list]) => {
        const measures = measure(list)
        return [name, stage, ...COLUMNS.map(([, value]) => value(measures))]
      }),
  )
  return table([['judge', 'stage', ...COLUMNS.map(([title]) => title)], ...rows])
}

export function reliabilityTable(scores: readonly EngineScore[]): string {
  const bins = measure(scores).reliability.filter((bin) => bin.count > 0)
  return table([
    ['sound from', 'cylinders', 'forecast', 'sound really'],
    ...bins.map((bin) => [bin.from.toFixed(1), String(bin.count), three(bin.meanForecast), three(bin.frequency)]),
  ])
}

/** What faulty cylinders were taken for: a row for each true fault, with the most frequent first guesses ("sound" when called sound). */
export function confusionTable(scores: readonly EngineScore[]): string {
  const rows = new Map<string, Map<string, number>>()
  for (const item of scores.flatMap((score) => score.cylinders).filter(isFaulty)) {
    const guess = item.sound >= 0.5 ? 'sound' : item.first
    const row = rows.get(item.truth) ?? new Map<string, number>()
    row.set(guess, (row.get(guess) ?? 0) + 1)
    rows.set(item.truth, row)
  }
  const lines = [...rows].map(([truth, row]): string[] => {
    const total = [...row.values()].reduce((a, b) => a + b, 0)
    const guesses = [...row].sort((a, b) => b[1] - a[1]).slice(0, 5)
    return [truth, String(total), percent((row.get(truth) ?? 0) / total), guesses.map(([guess, count]) => `${guess} ${count}`).join(', ')]
  })
  return table([['really', 'n', 'right', 'taken for'], ...lines.sort((a, b) => Number(b[1]) - Number(a[1]))])
}

/** Which engine-wide cause led, for each true one. */
export function causeTable(scores: readonly EngineScore[]): string {
  const rows = new Map<string, Map<string, number>>()
  for (const { cause } of scores) {
    const row = rows.get(cause.truth) ?? new Map<string, number>()
    row.set(cause.leading, (row.get(cause.leading) ?? 0) + 1)
    rows.set(cause.truth, row)
  }
  return table([
    ['cause', 'leading'],
    ...[...rows].map(([truth, row]): string[] => [truth, [...row].sort((a, b) => b[1] - a[1]).map(([leading, count]) => `${leading} ${count}`).join(', ')]),
  ])
}

/** The cylinders whose true state was given least. */
export function worstCases(scores: readonly EngineScore[], count: number): string {
  const all = scores.flatMap((score) => score.cylinders.map((item, at) => ({ index: score.index, cylinder: at + 1, item })))
  const worst = all.sort((a, b) => a.item.ofTruth - b.item.ofTruth).slice(0, count)
  return table([
    ['engine', 'cylinder', 'really', 'given', 'sound', 'leading fault'],
    ...worst.map(({ index, cylinder, item }) => [
      String(index),
      String(cylinder),
      item.truth,
      item.ofTruth.toExponential(1),
      three(item.sound),
      item.first,
    ]),
  ])
}

export function settlingTable(fixedOrder: readonly Settling[], next: readonly Settling[]): string {
  const row = (name: string, list: readonly Settling[]): string[] => [
    name,
    mean(list.map((item) => item.minutes)).toFixed(1),
    percent(mean(list.map((item) => (item.settled ? 1 : 0)))),
    mean(list.map((item) => item.stopMinutes)).toFixed(1),
    percent(mean(list.map((item) => (item.rightAtStop ? 1 : 0)))),
  ]
  const saved = mean(next.map((item) => item.minutes)) / mean(fixedOrder.map((item) => item.minutes))
  return `${table([
    ['order', 'minutes to right at .9', 'ever so', 'minutes at own stop', 'right there'],
    row('dry, wet, leakage', fixedOrder),
    row('next', next),
  ])}\nratio of minutes, next over fixed order: ${three(saved)} (engines: ${next.length})`
}

function mean(values: readonly number[]): number {
  return values.length === 0 ? 0 : values.reduce((a, b) => a + b, 0) / values.length
}

function two(value: number): string {
  return value.toFixed(2)
}

function three(value: number): string {
  return value.toFixed(3)
}

function percent(value: number): string {
  return `${(100 * value).toFixed(1)}%`
}

/** Plain text columns, the first two to the left. */
function table(rows: readonly (readonly string[])[]): string {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)))
  return rows
    .map((row) =>
      row
        .map((cell, i) => (i < 2 || i === row.length - 1 ? cell.padEnd(widths[i] ?? 0) : cell.padStart(widths[i] ?? 0)))
        .join('  ')
        .trimEnd(),
    )
    .join('\n')
}
