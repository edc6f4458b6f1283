// What npm runs once the packages stand: everything that is generated from the sources is made now, so that a start only starts.
// Quiet, since `npm run -s evaluate` may be what installs, and its standard output is for the answer alone.
import { buildWeb, generateDatabaseClient } from './build.mjs'

await generateDatabaseClient({ quiet: true })
await buildWeb({ quiet: true })
