import type { Conditions, EngineDescription, EnteredReading, FindingCode, Gauge, LeadPlan, LeakageTester, NewCatalogueItem, NewGarage, Operation, PriorWork } from '@evenbore/contract'

export type GarageKey = 'mill' | 'harbour' | 'tannery'

export interface DemoGarage {
  readonly key: GarageKey
  readonly garage: NewGarage
  readonly bays: readonly string[]
  readonly gauges: readonly { readonly name: string; readonly kind: 'compression' | 'vacuum'; readonly specification: Gauge }[]
  readonly testers: readonly { readonly name: string; readonly specification: LeakageTester }[]
  readonly catalogue: readonly NewCatalogueItem[]
}

/** `password` and `pin` are made at random when the chain is loaded. */
export interface DemoPerson {
  readonly name: string
  readonly email: string | null
  readonly hasPin: boolean
  readonly roles: readonly { readonly garage: GarageKey | null; readonly role: 'technician' | 'front-desk' | 'manager' | 'owner'; readonly approvalLimitMinor?: number }[]
}

export interface DemoFamily {
  readonly name: string
  readonly specification: Omit<EngineDescription, 'history'>
  readonly basis: Readonly<Record<string, string>>
  readonly leads?: LeadPlan
}

export interface DemoVehicle {
  readonly key: string
  readonly garage: GarageKey
  readonly plate: string
  readonly description: string
  readonly year?: number
  readonly customer: { readonly name: string; readonly phone: string | null; readonly email?: string }
  readonly family: string
  readonly engine: string
  readonly stampedNumber?: string
  readonly history?: EngineDescription['history']
}

/** Readings under one set of conditions; `hoursAgo` says when they were taken, by the tablet's clock. */
export interface DemoSession {
  readonly hoursAgo: number
  readonly conditions: Conditions
  readonly gauge?: string
  readonly tester?: string
  readonly readings: readonly EnteredReading[]
  /** Corrections: the reading at `index` was noted for the wrong cylinder. */
  readonly moved?: { readonly index: number; readonly cylinder: number; readonly reason: string }
  readonly leftOpen?: true
}

export interface DemoLine {
  readonly kind: 'labour' | 'part'
  readonly operation?: Operation
  readonly cylinders?: number[]
  readonly text: string
  /** Hours of labour, or pieces. */
  readonly quantity: number
  /** Parts: price of one in minor units. Labour is charged at the garage's rate. */
  readonly priceMinor?: number
}

/** One visit, told as far as it has come. The loader does whatever is named here, in this order. */
export interface DemoJob {
  readonly garage: GarageKey
  readonly vehicle: string
  readonly complaint: string
  readonly odometerKm?: number
  readonly priorWork?: PriorWork
  readonly promisedInHours?: number
  readonly bay?: string
  readonly contacts?: readonly { readonly kind: 'call' | 'message' | 'visit' | 'note'; readonly text: string; readonly nextInHours?: number }[]
  readonly sessions?: readonly DemoSession[]
  /** Read as slowly as at a real engine, so that the trail has the model's word behind each reading. */
  readonly slowly?: true
  /** What was done with the first suggestion. */
  readonly suggestion?: { readonly decision: 'taken' } | { readonly decision: 'declined'; readonly reason: string; readonly instead?: string }
  readonly nothingFound?: string
  /** Lines of the first version; `draftOnly` keeps them unsent. */
  readonly quote?: { readonly lines: readonly DemoLine[]; readonly note?: string; readonly draftOnly?: true }
  readonly sentBack?: { readonly question: string; readonly lines: readonly DemoLine[] }
  readonly refused?: string
  readonly approved?: true
  readonly customer?: { readonly kind: 'given' | 'declined'; readonly method: 'in-person' | 'phone' | 'message' | 'written'; readonly partsBack?: true }
  readonly parts?: readonly { readonly text: string; readonly expectedInHours: number; readonly arrived?: true }[]
  readonly repair?: { readonly finished?: true; readonly note?: string }
  readonly findings?: readonly { readonly cylinders: number[]; readonly fault: FindingCode; readonly seen: string }[]
  readonly release?: { readonly session: DemoSession; readonly outcome: 'passed' | 'failed'; readonly reason?: string } | { readonly waived: string }
  readonly handOver?: { readonly note?: string; readonly followUps?: readonly { readonly reason: string; readonly inDays?: number; readonly odometerKm?: number; readonly event?: string }[] }
  readonly cancelled?: string
}
