import type { Entry } from './entry.ts'
import type { Knowledge } from './knowledge.ts'

/** Heading and introduction of each table of the page, in order. */
const TABLES: ReadonlyArray<readonly [keyof Knowledge, string, string]> = [
  ['population', 'How common faults are', 'On engines brought in for testing, before any reading.'],
  ['faults', 'Faults of one cylinder', 'Share among faults; size in mm2 of leak on 400 cm3 (.86 loses 25 percent at the reference tester), without a leak the natural logarithm of healthy over faulty cranking pressure (0.1 is about 10 percent, 0.7 half); below least a strip-down calls it sound; where the leak is heard; what oil and slack rockers stop.'],
  ['bridge', 'Gasket between two neighbours', ''],
  ['pairs', 'Two faults in one cylinder', ''],
  ['tendencies', 'Faults that come to several cylinders', ''],
  ['causes', 'Causes common to all cylinders', 'Shift and spread of the logarithm of the common level.'],
  ['wornEvenly', 'Even wear', ''],
  ['oneBank', 'Valve timing off on one bank', ''],
  ['otherGauge', 'Another gauge', ''],
  ['crankingSpeed', 'Cranking speed', ''],
  ['levels', 'What a sound engine should read', 'Used where geometry is unknown, and widened where it is known.'],
  ['noise', 'How gauge readings scatter', ''],
  ['leakageTest', 'The leakage test', ''],
  ['listening', 'Listening', ''],
  ['oil', 'Oil in a wet test', ''],
  ['plugs', 'Plugs', ''],
  ['ignition', 'Ignition and mixture', ''],
  ['borescope', 'Borescope', ''],
  ['running', 'Running compression', ''],
  ['trace', 'Current while cranking', ''],
  ['valveTrain', 'Clearances and lift', ''],
  ['cylinderSigns', 'Signs of one cylinder', 'Chance of seeing the sign.'],
  ['engineSigns', 'Signs that any cylinder may give', 'Chance alone, and how each group of faults or cause adds to it.'],
  ['otherOil', 'Oil burnt for another reason', ''],
  ['quiet', 'Faults that show little', ''],
  ['groups', 'Groups of faults for those signs', ''],
  ['vacuum', 'Vacuum gauge at idle', ''],
  ['vacuumDepth', 'How deep a steady needle stands', ''],
  ['past', 'The engine\'s past and conditions', 'Factors on shares of faults and causes.'],
  ['pastLimits', 'Where the past begins to count', ''],
  ['afterRun', 'A run between two tests', ''],
  ['minutes', 'Minutes of each test', ''],
  ['stopping', 'When to stop testing', ''],
  ['operations', 'Repairs', 'Hours on a simple iron overhead-valve four (low, high), and the chance that it cures each fault.'],
  ['growth', 'How repairs grow with the engine', ''],
]

/** The knowledge tables as a page that a mechanic can read and argue with (Markdown). */
export function knowledgePage(knowledge: Knowledge): string {
  const parts = TABLES.map(([key, title, intro]) => {
    const rows = Object.entries(knowledge[key] as Readonly<Record<string, Entry<unknown>>>).map(([name, e]) =>
      `| ${words(name)} | ${cell(e.value)} | ${e.about === '' ? '' : escape(e.about)} | ${escape(e.basis)} |`)
    return [`## ${title}`, ...(intro === '' ? [] : ['', intro]), '', '| what | value | meaning | basis |', '|---|---|---|---|', ...rows].join('\n')
  })
  return [
    '# What the model believes before it sees a reading',
    '',
    `Version ${knowledge.version}. This page is written by \`npm run -s knowledge -w @evenbore/diagnosis\` from the tables in \`src/knowledge\`; a test fails when it is not current.`,
    'Every entry says where it comes from: a named source, "common practice, no source", or "from memory". Argue with it: a better source changes the table.',
    '',
    parts.join('\n\n'),
    '',
  ].join('\n')
}

function words(name: string): string {
  return name.replaceAll(/([a-z])([A-Z])/g, '$1 $2').toLowerCase()
}

function cell(value: unknown): string {
  if (typeof value !== 'object' || value === null) return escape(String(value))
  if (Array.isArray(value)) return escape(value.map((v) => (Array.isArray(v) ? v.join(' + ') : String(v))).join(', '))
  return escape(Object.entries(value).filter(([, v]) => v !== undefined && !(typeof v === 'object' && v !== null && Object.keys(v).length === 0))
    .map(([k, v]) => `${words(k)}: ${typeof v === 'object' && v !== null ? (Array.isArray(v) ? v.join(' to ') : Object.entries(v).map(([a, b]) => (typeof b === 'object' && b !== null ? `${a} (${Object.entries(b).map(([x, y]) => `${x} ${y}`).join(', ')})` : `${a} ${b}`)).join(', ')) : v}`).join('; '))
}

function escape(text: string): string {
  return text.replaceAll('|', '\\|').replaceAll('\n', ' ')
}
