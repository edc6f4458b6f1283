import { readConfig } from './config.ts'
import { makeOwnerLink } from './access/owner.ts'
import { checkDatabase, openDatabase } from './platform/database/database.ts'
import { runningClusterUrl } from './platform/postgres/running.ts'

/** `npm run way-back-in -- E-MAIL` on the server's console, while the service runs: a one-time link for an owner who is locked out. */
async function run(email: string | undefined): Promise<void> {
  if (email === undefined) throw new Error('Usage: npm run way-back-in -- E-MAIL')
  const config = readConfig(process.env)
  const url = config.databaseUrl ?? (await runningClusterUrl(config.dataFolder, 'evenbore'))
  if (url === undefined) throw new Error('Evenbore is not running here: start it first, or name its database in DATABASE_URL.')
  await checkDatabase(url)
  const database = openDatabase(url)
  try {
    const person = await database.prisma.person.findFirst({ where: { email: email.toLowerCase(), leftAt: null, personRoles: { some: { role: 'owner' } } } })
    if (person === null) throw new Error(`No owner has the e-mail ${email}.`)
    const link = await makeOwnerLink(database, person.id)
    process.stdout.write(`Open this link once, within a day, to set a new password:\n  ${config.publicUrl ?? `http://localhost:${config.port}`}/owner/back#${link}\n`)
  } finally {
    await database.close()
  }
}

try {
  await run(process.argv[2])
} catch (error) {
  process.stderr.write(`${(error as Error).message}\n`)
  process.exitCode = 1
}
