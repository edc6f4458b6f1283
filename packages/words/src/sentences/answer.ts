import type { Approval, Authorisation } from '@evenbore/contract'
import type { Words } from '../en.ts'

/** What a manager answered: "sent back by Ruth, 10:20: “What does the oil test say?”" */
export function answerWords(approval: Approval, words: Words, when: (instant: string) => string): string {
  const said = words.quote.answered[approval.kind]?.(approval.by.name, when(approval.at)) ?? approval.kind
  const standIn = approval.deputyFor ? ` (${words.quote.standsInFor(approval.deputyFor.name)})` : ''
  return `${said}${standIn}${approval.reason ? `: ${words.ui.quoted(approval.reason)}` : ''}`
}

/** The customer's word as it was given. */
export function authorisationWords(given: Authorisation, words: Words, here: { readonly when: (instant: string) => string; readonly money: (minor: number, currency: string) => string }): string {
  const { quote } = words
  const how = [quote.methods[given.method], given.numberCalled].filter(Boolean).join(' ')
  const said = given.kind === 'given' ? quote.authorised(given.personName, here.money(given.amountMinor, given.currency), how, here.when(given.givenAt)) : quote.wasDeclined(given.personName, how, here.when(given.givenAt))
  return [said, given.partsBack ? quote.partsBack : '', given.note ? words.ui.quoted(given.note) : ''].filter(Boolean).join('; ')
}
