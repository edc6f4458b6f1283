import { client } from '#lib/api/client.ts'
import { signedIn } from '#lib/signed-in/signed-in.svelte.ts'
import { contact } from './contact.svelte.ts'
import { outbox } from './outbox.svelte.ts'
import { checkPin, preparePin } from './pin.ts'
import { present } from './present.svelte.ts'

export type TakeOverAnswer = { readonly taken: true } | { readonly taken: false; readonly why: 'wrong' | 'unknown-offline' | 'wait' | 'refused'; readonly seconds?: number }

/** True when something waits, the network is there, and nobody here is signed in: only a PIN helps. */
export const pinNeeded = $state({ now: false })

/** A PIN given without network, in memory only, to confirm when the network is back. */
let unconfirmed: { readonly person: string; readonly name: string; readonly pin: string } | undefined

/** Hands the tablet to a person: by the server, or without network by what the tablet remembers of the last day. */
export async function takeOver(person: { readonly id: string; readonly name: string }, pin: string): Promise<TakeOverAnswer> {
  // remembered before the person is shown as here: from then on the hand may go anywhere, and the network too
  const answer = await signedIn.takeOver(person.id, pin, preparePin(person.id, person.name, pin))
  if (answer.ok) {
    contact.online = true
    present.arrive({ ...person, unconfirmed: false })
    pinNeeded.now = false
    unconfirmed = undefined
    void outbox.flush()
    return { taken: true }
  }
  const { status } = answer.error
  if (status === 429) return { taken: false, why: 'wait', seconds: 60 }
  if (status === 401 || status === 400 || status === 403) return { taken: false, why: 'wrong' }
  if (status !== 0 && status < 500) return { taken: false, why: 'refused' }
  contact.lost()
  const checked = await checkPin(person.id, pin)
  if (checked === 'unknown') return { taken: false, why: 'unknown-offline' }
  if (checked === 'wrong') return { taken: false, why: 'wrong' }
  unconfirmed = { person: person.id, name: person.name, pin }
  present.arrive({ ...person, unconfirmed: true })
  return { taken: true }
}

/** Gives the tablet back; what waits stays and is sent under the next sign-in, with the name of who took it. */
export async function leaveTablet(): Promise<void> {
  unconfirmed = undefined
  present.leave()
  await signedIn.signOut()
}

/**
 * May the outbox send just now? Only in a person's name: a tablet by itself may read, not write.
 * Renews the sign-in by its cookie, else confirms the PIN that was given without network, else asks for one.
 */
export async function somebodySignedIn(): Promise<boolean> {
  await signedIn.start()
  if (!unconfirmed && (client.session.present || (await client.session.renew()))) {
    if (!signedIn.person) await signedIn.refresh()
    if (signedIn.person) {
      present.arrive({ id: signedIn.person.id, name: signedIn.person.name, unconfirmed: false })
      pinNeeded.now = false
      return true
    }
  }
  if (unconfirmed) {
    await confirm()
    if (signedIn.person) return true
  }
  pinNeeded.now = contact.online && unconfirmed === undefined
  return false
}

/** Asks the server about a PIN that was taken without network, once there is one. */
async function confirm(): Promise<void> {
  if (!unconfirmed) return
  const { person, name, pin } = unconfirmed
  const answer = await signedIn.takeOver(person, pin, preparePin(person, name, pin))
  if (answer.ok) {
    unconfirmed = undefined
    present.arrive({ id: person, name, unconfirmed: false })
    pinNeeded.now = false
  } else if (answer.error.status === 401 || answer.error.status === 403) {
    // the PIN is not good any more: what was recorded is kept and shown, the person must sign in anew
    unconfirmed = undefined
    present.leave()
  }
}

outbox.gate = somebodySignedIn
