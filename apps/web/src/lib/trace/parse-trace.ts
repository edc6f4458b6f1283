/** A current trace as columns: times in seconds, currents in ampere. */
export interface Trace {
  readonly seconds: readonly number[]
  readonly amps: readonly number[]
}

/** Why a text is no trace; `line` counts from 1, as an editor shows it. */
export type TraceFault =
  | { readonly error: 'empty' | 'rate-needed' | 'too-long' }
  | { readonly error: 'not-a-number' | 'time-goes-back' | 'one-column'; readonly line: number; readonly got: string }

/** Samples of a whole case that the contract takes; one trace may use a tenth of them. */
export const MOST_SAMPLES = 20_000
/** Lines read at all: ten minutes at a thousand a second. */
const MOST_LINES = 600_000

const MILLISECONDS = /\bms\b|milli/iu
const CURRENT = /^(i|a)\b|amp|curr|strom|corriente/iu

/**
 * Reads what an instrument exports or a person pastes: time and current on each line, parted by tab, semicolon, space or comma; a line
 * of headings before it, which may say milliseconds or that the current comes first; decimal points or commas. One column alone is the
 * current, and `rate` its samples a second. Times are moved to begin at nought; more than MOST_SAMPLES are averaged in groups.
 *
 * @example parseTrace('s;A\n0,000;121,4\n0,001;122,0') // { trace: { seconds: [0, 0.001], amps: [121.4, 122] }, grouped: 1 }
 */
export function parseTrace(text: string, rate?: number): { readonly trace: Trace; readonly grouped: number } | TraceFault {
  const lines = text.replace(/^\uFEFF/u, '').split(/\r\n|\n|\r/u)
  if (lines.length > MOST_LINES) return { error: 'too-long' }
  const parted = separatorOf(lines)
  let heading: readonly string[] = []
  const seconds: number[] = []
  const amps: number[] = []
  for (const [index, line] of lines.entries()) {
    if (line.trim() === '') continue
    const cells = cellsOf(line, parted)
    const numbers = cells.map(numberOf)
    const readable = numbers.length > 0 && numbers.slice(0, 2).every((number) => number !== undefined)
    if (!readable && seconds.length === 0) {
      // headings may take several lines; the last of them names the columns
      heading = cells
      continue
    }
    if (!readable) return { error: 'not-a-number', line: index + 1, got: line.trim().slice(0, 40) }
    const swapped = CURRENT.test(heading[0] ?? '') && cells.length > 1
    const [first = 0, second] = numbers
    if (second === undefined && rate === undefined) return amps.length === 0 ? { error: 'rate-needed' } : { error: 'one-column', line: index + 1, got: line.trim().slice(0, 40) }
    const time = second === undefined ? amps.length / (rate ?? 1) : swapped ? second : first
    const last = seconds.at(-1)
    if (last !== undefined && time <= last) return { error: 'time-goes-back', line: index + 1, got: line.trim().slice(0, 40) }
    seconds.push(time)
    amps.push(second === undefined || swapped ? first : second)
  }
  if (amps.length < 2) return { error: 'empty' }
  const scale = heading.some((cell) => MILLISECONDS.test(cell)) ? 1000 : 1
  const start = seconds[0]!
  return grouped({ seconds: seconds.map((time) => round((time - start) / scale, 1e6)), amps: amps.map((amp) => round(amp, 1e3)) })
}

/** What parts the cells: where it may be a decimal comma, a comma parts nothing. */
function separatorOf(lines: readonly string[]): RegExp {
  const sample = lines.filter((line) => /\d/u.test(line)).slice(0, 20)
  if (sample.some((line) => line.includes('\t'))) return /\t/u
  if (sample.some((line) => line.includes(';'))) return /;/u
  // "0,001 121,4": a space stands between two numbers, so the commas are decimal marks
  if (sample.every((line) => /\d\s+[-+]?[\d.,]/u.test(line.trim()) && !/,\s/u.test(line.trim()))) return /\s+/u
  // one comma a line and never a point: "121,4" alone could be either; with a point, the comma parts
  return /,/u
}

function cellsOf(line: string, parted: RegExp): string[] {
  return line.trim().split(parted).map((cell) => cell.trim().replace(/^"(.*)"$/u, '$1'))
}

function numberOf(cell: string): number | undefined {
  const plain = cell.replace('−', '-').replace(/\s*(s|ms|a|amp|amps)$/iu, '')
  if (!/^[-+]?(\d+([.,]\d*)?|[.,]\d+)(e[-+]?\d+)?$/iu.test(plain)) return undefined
  return Number(plain.replace(',', '.'))
}

/** Neighbours averaged so that at most MOST_SAMPLES are left; humps take a hundred times longer than a group. */
function grouped(trace: Trace): { readonly trace: Trace; readonly grouped: number } {
  const by = Math.ceil(trace.amps.length / MOST_SAMPLES)
  if (by === 1) return { trace, grouped: 1 }
  const mean = (values: readonly number[], from: number) => values.slice(from, from + by).reduce((sum, value) => sum + value, 0) / Math.min(by, values.length - from)
  const starts = Array.from({ length: Math.floor(trace.amps.length / by) }, (_, group) => group * by)
  return { trace: { seconds: starts.map((from) => round(mean(trace.seconds, from), 1e6)), amps: starts.map((from) => round(mean(trace.amps, from), 1e3)) }, grouped: by }
}

const round = (value: number, per: number) => Math.round(value * per) / per
