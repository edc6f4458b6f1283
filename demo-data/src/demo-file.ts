import type { DemoAccounts } from './accounts.ts'

/** What `.data/demo.json` holds: how to sign in as anybody of the demo chain. */
export interface DemoFile {
  readonly baseUrl: string
  readonly people: readonly { readonly name: string; readonly roles: readonly { readonly garage: string | null; readonly role: string }[]; readonly email: string | null; readonly password: string | null; readonly pin: string | null }[]
  readonly tablets: readonly { readonly bay: string; readonly enrolmentCode: string }[]
  readonly apps: readonly { readonly clientId: string; readonly clientSecret: string; readonly scopes: readonly string[] }[]
  readonly signInUrl: string
  readonly enrolUrl: string
  readonly tokenUrl: string
}

/** The file's content for accounts just made. */
export function demoFile(baseUrl: string, accounts: Pick<DemoAccounts, 'people' | 'tablets' | 'apps'>): DemoFile {
  return {
    baseUrl,
    people: accounts.people.map(({ name, roles, email, password, pin }) => ({ name, roles: roles.map(({ garage, role }) => ({ garage, role })), email, password, pin })),
    tablets: accounts.tablets,
    apps: accounts.apps,
    signInUrl: `${baseUrl}/v1/sign-in`,
    enrolUrl: `${baseUrl}/v1/tablets/enrol`,
    tokenUrl: `${baseUrl}/v1/token`,
  }
}
