// `npm start`: installs what is missing, builds what is stale, then starts the service.
import { ensure } from './ensure.mjs'
import { runProgram } from './program.mjs'

await ensure({ web: true, quiet: false })
runProgram('apps/api/src/main.ts', process.argv.slice(2))
