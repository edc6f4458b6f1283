import type { NewCatalogueItem } from '@evenbore/contract'
import type { DemoGarage } from './types.ts'

const psi = (value: number) => ({ value, unit: 'psi' as const })
const bar = (value: number) => ({ value, unit: 'bar' as const })

/** Labour times are the chain's own round figures; prices are invented. */
function catalogue(taxBasisPoints: number): NewCatalogueItem[] {
  const labour = (operation: NewCatalogueItem['operation'], text: string, minutes: number): NewCatalogueItem => ({ kind: 'labour', operation, text, minutes, unitPriceMinor: null, taxBasisPoints })
  const part = (operation: NewCatalogueItem['operation'], text: string, unitPriceMinor: number): NewCatalogueItem => ({ kind: 'part', operation, text, minutes: null, unitPriceMinor, taxBasisPoints })
  return [
    labour('look-borescope', 'Look through the plug hole', 20),
    labour('clearances-run-test', 'Set clearances, run, test again', 60),
    labour('head-valves', 'Head off and on, valves and seats', 600),
    part('head-valves', 'Head set and valves', 18_400),
    labour('rings', 'Rings in frame', 1140),
    part('rings', 'Ring set', 14_900),
    labour('gasket-replace', 'Head off and on, gasket, faces checked', 420),
    part('gasket-replace', 'Gasket set and bolts', 11_840),
    labour('gasket-retorque', 'Torque the head again', 45),
    labour('sticking-valve', 'Free the valve, run, test again', 90),
    labour('decoke', 'Head off and on, carbon removed', 450),
    labour('rocker-pushrod', 'Rocker or pushrod', 90),
    labour('starter-battery', 'Starter and battery checked', 60),
    labour('timing', 'Valve timing set', 240),
  ]
}

/** Three invented garages of one invented chain. */
export const GARAGES: readonly DemoGarage[] = [
  {
    key: 'mill',
    garage: { name: 'Mill Lane', codeLetter: 'K', timeZone: 'Europe/Dublin', currency: 'EUR', pressureUnit: 'psi', elevationM: 95, locale: 'en', labourRateMinor: 7000, taxBasisPoints: 2000, pricesIncludeTax: false, toleranceBasisPoints: 0 },
    bays: ['Bay 1', 'Bay 2', 'Bay 3', 'Bay 4'],
    gauges: [
      { name: 'Gauge 4', kind: 'compression', specification: { span: psi(300), accuracyClass: 1.6, resolution: psi(1), connection: 'screwed', volumeBeforeValveMl: 1 } },
      { name: 'Gauge 5, old', kind: 'compression', specification: { span: psi(300), accuracyClass: 2.5, resolution: psi(5), connection: 'held' } },
      { name: 'Vacuum gauge', kind: 'vacuum', specification: { span: bar(1), accuracyClass: 2.5 } },
    ],
    testers: [{ name: 'Leakage tester A', specification: { supply: psi(80), restrictorMm: 1.016 } }],
    catalogue: catalogue(2000),
  },
  {
    key: 'harbour',
    garage: { name: 'Harbour Road', codeLetter: 'H', timeZone: 'Europe/Dublin', currency: 'EUR', pressureUnit: 'psi', elevationM: 6, locale: 'en', labourRateMinor: 6800, taxBasisPoints: 2000, pricesIncludeTax: false, toleranceBasisPoints: 500 },
    bays: ['Bay 1', 'Bay 2', 'Bay 3'],
    gauges: [
      { name: 'Gauge H1', kind: 'compression', specification: { span: psi(300), accuracyClass: 1.6, resolution: psi(1), connection: 'screwed' } },
      { name: 'Diesel gauge', kind: 'compression', specification: { span: psi(1000), accuracyClass: 1, resolution: psi(5), connection: 'screwed' } },
    ],
    testers: [{ name: 'Leakage tester H', specification: { supply: psi(80), restrictorMm: 1.016 } }],
    catalogue: catalogue(2000),
  },
  {
    key: 'tannery',
    garage: { name: 'Old Tannery', codeLetter: 'T', timeZone: 'Europe/Berlin', currency: 'EUR', pressureUnit: 'bar', elevationM: 640, locale: 'de', labourRateMinor: 7400, taxBasisPoints: 1900, pricesIncludeTax: true, toleranceBasisPoints: 0 },
    bays: ['Platz 1', 'Platz 2', 'Platz 3'],
    gauges: [{ name: 'Manometer 2', kind: 'compression', specification: { span: bar(20), accuracyClass: 1.6, resolution: bar(0.1), connection: 'screwed' } }],
    testers: [{ name: 'Druckverlusttester', specification: { supply: bar(5.5), restrictorMm: 1.016 } }],
    catalogue: catalogue(1900),
  },
]
