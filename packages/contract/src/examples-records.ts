/** Example bodies of what garages set up and what the front desk writes. Invented people, plates and numbers. */
const ID = '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4b'
const OTHER_ID = '019a1f60-7c1e-7b3a-9d52-0d3c5e1f2a4c'
const INSTANT = '2026-05-06T10:20:00.000Z'
const DAY = '2026-06-20'
const PASSWORD = 'five old spanners'

const FOUR = { fuel: 'petrol', layout: 'inline', cylinders: 4, firingOrder: [1, 3, 4, 2], boreMm: 84, strokeMm: 89, compressionRatio: 8.8, limits: { minimum: { value: 120, unit: 'psi' }, spreadPercent: 10 } }
const GARAGE = {
  name: 'Quay Street Engines', codeLetter: 'Q', timeZone: 'Europe/Lisbon', currency: 'EUR', pressureUnit: 'psi', elevationM: 12, locale: 'en', labourRateMinor: 7_800, taxBasisPoints: 2_300, pricesIncludeTax: false, toleranceBasisPoints: 0,
}
const CATALOGUE_ITEM = { kind: 'labour', operation: 'head-valves', text: 'Head off, valve and seat', minutes: 540, unitPriceMinor: 0, taxBasisPoints: 2_300 }
const CUSTOMER = { name: 'Ada Wrenford', phone: '+351 555 0142', email: 'ada@example.test', address: '3 Hill Steps', note: 'Rings after six' }
const GAUGE = { kind: 'compression', name: 'Screw-in gauge', specification: { span: { value: 300, unit: 'psi' }, accuracyClass: 1.6, resolution: { value: 1, unit: 'psi' } }, checkDue: DAY }
const PRIOR_WORK = { headTorqued: true, clearancesSet: false, ringsNew: false, gasketNew: true, valvesGround: false, overheated: false, monthsStored: 3, note: 'Gasket done last year' }

export const RECORD_EXAMPLES = {
  SignIn: { email: 'ada@example.test', password: PASSWORD },
  Refresh: { refreshToken: 'ebref-example' },
  MyPreferences: { locale: 'de', pressureUnit: 'bar' },
  SecondFactorKept: { secret: 'ABCDEFGHIJKLMNOPQRSTUVWXYZ234567', oneTimeCode: '123456' },
  OwnerSetup: { link: 'eblink-example', name: 'Olga Ownfield', email: 'olga@example.test', password: PASSWORD },
  WayBackIn: { link: 'eblink-example', password: PASSWORD },
  Enrol: { enrolmentCode: 'QUAY-7T4K' },
  TakeOver: { person: ID, pin: '4821' },
  TokenRequest: { grant_type: 'client_credentials', scope: 'jobs:read evaluate', client_id: 'app-example', client_secret: 'ebapp-example' },
  NewTablet: { bay: ID, name: 'Tablet on the lift' },
  NewOutsideApp: { name: 'Ledger', scopes: ['jobs:read'], garages: [ID] },
  NewGarage: GARAGE,
  GarageEdit: GARAGE,
  NewBay: { name: 'Bay 3', position: 3 },
  BayEdit: { name: 'Bay 3', position: 3, closed: false },
  NewGauge: GAUGE,
  GaugeEdit: { name: GAUGE.name, specification: GAUGE.specification, checkDue: DAY, retired: false },
  NewCatalogueItem: CATALOGUE_ITEM,
  CatalogueItemEdit: { ...CATALOGUE_ITEM, retired: false },
  NewPerson: { name: 'Ned Torkham', email: 'ned@example.test', password: PASSWORD, pin: '4821', roles: [{ garage: ID, role: 'manager', approvalLimitMinor: 150_000 }], locale: 'en', pressureUnit: 'psi' },
  PersonEdit: { name: 'Ned Torkham', email: 'ned@example.test', password: PASSWORD, pin: '4821', roles: [{ garage: ID, role: 'technician' }], locale: 'en', pressureUnit: 'psi', left: false },
  NewDeputy: { manager: ID, deputy: OTHER_ID, from: INSTANT, until: '2026-05-20T10:20:00.000Z' },
  NewCustomer: CUSTOMER,
  CustomerEdit: CUSTOMER,
  NewVehicle: { customer: ID, plate: 'QX 27 NB', description: 'grey estate', year: 1974, note: 'Choke by hand' },
  VehicleEdit: { customer: ID, plate: 'QX 27 NB', description: 'grey estate', year: 1974, note: 'Choke by hand' },
  NewEngineFamily: { name: 'Iron four, 1.8', specification: FOUR, basis: { limits: 'workshop manual, page 12' }, leads: { rotor: 'clockwise', leadOneAtOClock: 5 } },
  EngineFamilyEdit: { name: 'Iron four, 1.8', specification: FOUR, basis: { limits: 'workshop manual, page 12' }, leads: { rotor: 'clockwise', leadOneAtOClock: 5 } },
  NewEngine: { family: null, description: 'iron four of the grey estate', stampedNumber: 'IF-20417', ownValues: FOUR, history: { kmSinceRings: 40_000, overheated: false } },
  EngineEdit: { description: 'iron four of the grey estate', stampedNumber: 'IF-20417', ownValues: FOUR, history: { kmSinceRings: 40_000, overheated: false } },
  NewFitting: { vehicle: ID, from: INSTANT, odometerKm: 120_000 },
  Removal: { until: INSTANT },
  NewEngineEvent: { kind: 'rebuilt', at: INSTANT, text: 'New rings and bearings' },
  SameEngine: { same: OTHER_ID, reason: 'Booked in twice under two plates' },
  NewJob: {
    customer: CUSTOMER, vehicle: { plate: 'QX 27 NB', description: 'grey estate', year: 1974 }, engine: { description: 'iron four', ownValues: FOUR }, complaint: 'Shakes at idle, down on power', odometerKm: 182_400, priorWork: PRIOR_WORK,
    promisedAt: INSTANT, bay: ID, comeBackOf: OTHER_ID, fulfils: [ID],
  },
  JobEdit: { complaint: 'Shakes at idle', odometerKm: 182_410, priorWork: PRIOR_WORK, promisedAt: INSTANT },
  BayPlacement: { bay: ID },
  TestingClosed: { note: 'Even and tight on all four' },
  Cancellation: { reason: 'Sold as it stands' },
  HandOver: { odometerKm: 182_420, note: 'Mind the first miles', followUps: [{ reason: 'Head torqued after the first 1000 km', latest: DAY, odometerKm: 183_400, event: 'first service' }] },
  NewContact: { kind: 'call', text: 'Will think it over', nextAt: INSTANT },
  NewPartsOrder: { text: 'Exhaust valve, one', expectedAt: INSTANT },
} as const
