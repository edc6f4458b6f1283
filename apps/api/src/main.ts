import { enableCompileCache } from 'node:module'
import { resolve } from 'node:path'

// Stripping the types of some hundred files takes half of a start; what is stripped and compiled is kept for the next one. Only what
// is imported after this line is, hence the import as a call.
enableCompileCache(resolve(import.meta.dirname, '..', '..', '..', '.cache', 'compiled'))
await import('./start/service.ts')
