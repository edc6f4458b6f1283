import type { Case, Evaluation } from '@evenbore/contract'

/** What the benchmark asks of whoever judges a case: the model, or the hand rules beside it. */
export type Opinion = Pick<Evaluation, 'cylinders' | 'neighbours' | 'engine'> & { readonly probabilityInside: number | null }
export type Judge = { readonly name: string; readonly judge: (value: Case) => Opinion }
