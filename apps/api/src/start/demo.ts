import { spawn } from 'node:child_process'
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join, resolve } from 'node:path'
import { createInterface } from 'node:readline'
import { z } from 'zod'
import type { Config } from '../config.ts'
import { isUnusedCode, replaceUsedCode } from '../access/demo-codes.ts'
import type { Database } from '../platform/database/database.ts'
import type { App } from '../platform/http/app.ts'
import { say } from './say.ts'

const LOADER = resolve(import.meta.dirname, '..', '..', '..', '..', 'demo-data', 'src', 'load.ts')

const accountsSchema = z.strictObject({
  people: z.array(
    z.strictObject({
      name: z.string(),
      roles: z.array(z.strictObject({ garage: z.uuid().nullable(), role: z.string() })),
      email: z.string().nullable(),
      password: z.string().nullable(),
      pin: z.string().nullable(),
    }),
  ),
  tablets: z.array(z.strictObject({ bay: z.uuid(), enrolmentCode: z.string() })),
  apps: z.array(z.strictObject({ clientId: z.string(), clientSecret: z.string(), scopes: z.array(z.string()) })),
})
/** The demo chain's accounts, as its loader reports them and as they are kept for whoever tries the demo. */
export type DemoAccounts = z.infer<typeof accountsSchema>

/** What the loader says on its standard output, one JSON document a line. */
const reportSchema = z.union([z.strictObject({ accounts: accountsSchema }), z.strictObject({ progress: z.string() }), z.strictObject({ done: z.string() })])

const loadingMark = (config: Config) => join(config.dataFolder, 'demo-is-being-made')
const demoFile = (config: Config) => join(config.dataFolder, 'demo.json')

/** The accounts of an earlier start, or undefined. */
export function readDemo(config: Config): DemoAccounts | undefined {
  if (!existsSync(demoFile(config))) return undefined
  const { people, tablets, apps } = JSON.parse(readFileSync(demoFile(config), 'utf8')) as Record<string, unknown>
  return accountsSchema.safeParse({ people, tablets, apps }).data
}

/** Writes demo.json whole or not at all, readable by its owner only: it holds passwords. */
function writeDemo(config: Config, accounts: DemoAccounts, baseUrl: string): void {
  const file = demoFile(config)
  const content = { baseUrl, ...accounts, signInUrl: `${baseUrl}/v1/sign-in`, enrolUrl: `${baseUrl}/v1/tablets/enrol`, tokenUrl: `${baseUrl}/v1/token` }
  writeFileSync(`${file}.new`, `${JSON.stringify(content, null, 2)}\n`, { mode: 0o600 })
  chmodSync(`${file}.new`, 0o600)
  renameSync(`${file}.new`, file)
}

/** A later start: the address anew, and a fresh code for each tablet whose code has been used. */
export function refreshDemo(config: Config, database: Database, stored: DemoAccounts) {
  return {
    signIns: signInLines(stored),
    write: async (address: string) => {
      const tablets = await Promise.all(stored.tablets.map(async (tablet) => ((await isUnusedCode(database, tablet.enrolmentCode)) ? tablet : replaceUsedCode(database, tablet.bay))))
      writeDemo(config, { ...stored, tablets }, address)
    },
  }
}

/** True when an earlier process ended in the middle of making the demo chain. */
export function wasCutShort(config: Config): boolean {
  return existsSync(loadingMark(config))
}

/** A demo chain that is being made. */
export type Loading = {
  readonly signIns: string[]
  readonly write: (address: string) => Promise<void>
  /** Settled when the last job is there, or when making it failed. */
  readonly complete: Promise<void>
}

/**
 * Loads the demo chain by a child process that posts it through the API, on a door of its own on this machine: the service itself
 * listens once the accounts are there, and the jobs go on arriving behind it.
 * The child is told DEMO_BASE_URL and DEMO_OWNER_LINK (one-time, makes the owner).
 * @param whenStopping is told how to end the child when the service is stopped meanwhile
 * @returns undefined where there is no demo chain, or where it could not be made (which is said): the service starts without it
 */
export async function loadDemo(config: Config, app: App, ownerLink: string, whenStopping: (end: () => Promise<void>) => void): Promise<Loading | undefined> {
  if (!existsSync(LOADER)) return undefined
  const door = createServer((request, response) => app.routing(request, response))
  await new Promise<void>((done) => door.listen(0, '127.0.0.1', done))
  mkdirSync(config.dataFolder, { recursive: true })
  writeFileSync(loadingMark(config), '')
  say('Making the demo chain')
  const child = spawn(process.execPath, [LOADER], {
    stdio: ['ignore', 'pipe', 'pipe'],
    // A process group of its own: Ctrl-C is ours to pass on, in the right order.
    detached: process.platform !== 'win32',
    env: { ...process.env, DEMO_BASE_URL: `http://127.0.0.1:${(door.address() as AddressInfo).port}`, DEMO_OWNER_LINK: ownerLink },
  })
  let complaint = ''
  let stopped = false
  child.stderr.on('data', (chunk: Buffer) => { complaint = (complaint + chunk.toString('utf8')).slice(-4_000) })
  const accounts = new Promise<DemoAccounts | undefined>((done) => {
    createInterface({ input: child.stdout }).on('line', (line) => {
      const report = reportSchema.safeParse(parsed(line)).data
      if (report === undefined) return
      if ('accounts' in report) done(report.accounts)
      else say(`  ${'progress' in report ? report.progress : report.done}`)
    })
    child.once('close', () => done(undefined))
  })
  const complete = new Promise<void>((done) => {
    child.once('close', (code) => {
      door.closeAllConnections()
      door.close()
      if (!stopped) rmSync(loadingMark(config), { force: true })
      if (code !== 0 && !stopped) say(`The demo chain is incomplete: ${complaint.trim().split('\n').at(-1) ?? ''} (exit ${code})`)
      done()
    })
  })
  whenStopping(async () => {
    stopped = child.exitCode === null
    child.kill('SIGTERM')
    await complete
  })
  const made = await accounts
  if (made === undefined) return undefined
  return {
    signIns: signInLines(made),
    write: async (address) => writeDemo(config, made, address),
    complete,
  }
}

function parsed(line: string): unknown {
  try {
    return JSON.parse(line)
  } catch {
    return undefined
  }
}

/** One person for each role, so that a visitor sees at once who to be. */
function signInLines({ people }: DemoAccounts): string[] {
  const shown = ['owner', 'manager', 'front-desk', 'technician'].flatMap((role) => {
    const person = people.find((one) => one.email !== null && one.password !== null && one.roles.some((held) => held.role === role))
    return person === undefined ? [] : [`  ${role.padEnd(11)} ${person.email}  ${person.password}`]
  })
  return ['Demo sign-ins (all of them, with PINs and tablet codes, in .data/demo.json):', ...shown]
}
