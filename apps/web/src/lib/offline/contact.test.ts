import { expect, test } from 'vitest'
import { contact } from './contact.svelte.ts'

test('an answer to a request sent before the network went does not bring it back; a later one does', () => {
  contact.online = true
  contact.cutOff(2000)
  contact.heard(new Response(), 1000)
  expect(contact.online).toBe(false)
  contact.heard(new Response(), 2001)
  expect(contact.online).toBe(true)
})
