import { enableCompileCache } from 'node:module'
import { resolve } from 'node:path'

// Prisma sends the statements of one transaction without waiting for the answer of the one before; pg queues them and warns of a
// version that will not. Nobody who starts the service can do anything about it.
const told = process.listeners('warning')
process.removeAllListeners('warning')
process.on('warning', (warning) => {
  if (!warning.message.startsWith('Calling client.query() when')) for (const tell of told) tell(warning)
})

// Stripping the types of some hundred files takes half of a start; what is stripped and compiled is kept for the next one. Only what
// is imported after this line is, hence the import as a call.
enableCompileCache(resolve(import.meta.dirname, '..', '..', '..', '.cache', 'compiled'))
await import('./start/service.ts')
