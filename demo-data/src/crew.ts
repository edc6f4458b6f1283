import { createClient, type Client } from '@evenbore/client'
import type { DemoAccounts } from './accounts.ts'
import type { GarageKey } from './chain/index.ts'

/** Who works on a job: each acts with his own sign-in, as he would in the garage. */
export interface Crew {
  readonly desk: Client
  readonly technician: Client
  readonly manager: Client
  readonly owner: Client
}

/** Signs in one person of each role in a garage, once. */
export async function crewOf(baseUrl: string, accounts: DemoAccounts, garage: GarageKey): Promise<Crew> {
  const here = accounts.garages.get(garage)!.id
  const signIn = async (role: string): Promise<Client> => {
    const person = accounts.people.find((candidate) => candidate.email !== null && candidate.roles.some((held) => held.garage === here && held.role === role))
    if (!person) throw new Error(`the demo chain has no ${role} with an e-mail address in this garage`)
    const client = createClient({ baseUrl })
    const answer = await client.session.signIn({ kind: 'person', email: person.email!, password: person.password! })
    if (!answer.ok) throw new Error(`${person.name} could not sign in: ${answer.error.title}`)
    return client
  }
  return { desk: await signIn('front-desk'), technician: await signIn('technician'), manager: await signIn('manager'), owner: accounts.owner }
}
