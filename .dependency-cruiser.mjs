// The arrows between rooms, and inside them. What is not drawn here is forbidden; `npm run arrows` checks it.

/** Tests may look into what they test, and use tests/support. */
const TEST = '[.]test[.]ts$'
const OURS = '^(packages|apps|demo-data|tests)/'
/** A room may import only these of our own; packages from npm and Node itself are another matter. */
const room = (name, from, allowed, comment, notFrom = []) => ({
  name,
  comment,
  severity: 'error',
  from: { path: from, pathNot: [TEST, ...notFrom] },
  to: { path: OURS, pathNot: allowed },
})
const never = (name, from, to, comment, more = {}) => ({ name, comment, severity: 'error', from: { path: from, pathNot: [TEST] }, to: { path: to, ...more } })

export default {
  forbidden: [
    room('contract-alone', '^packages/contract/', ['^packages/contract/'], 'the contract imports nothing of ours'),
    room('diagnosis-pure', '^packages/diagnosis/', ['^packages/(diagnosis|contract)/'], 'the model imports the contract only'),
    {
      name: 'diagnosis-no-runtime',
      comment: 'the model has no I/O, no clock and no Node built-ins',
      severity: 'error',
      from: { path: '^packages/diagnosis/src/', pathNot: [TEST] },
      to: { dependencyTypes: ['core', 'npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'] },
    },
    room('client-on-contract', '^packages/client/', ['^packages/(client|contract)/'], 'the client imports the contract only'),
    room('words-on-contract', '^packages/words/', ['^packages/(words|contract)/'], 'words import the contract only'),
    room('web-without-api', '^apps/web/', ['^apps/web/', '^packages/(contract|diagnosis|client|words)/'], 'the web never imports the API'),
    room('api-inward', '^apps/api/', ['^apps/api/', '^packages/(contract|diagnosis|words)/'], 'the API imports contract, diagnosis and words'),
    room('evaluate-small', '^apps/evaluate/', ['^apps/evaluate/', '^packages/(contract|diagnosis)/'], 'the command line imports contract and diagnosis'),
    room('demo-through-the-door', '^demo-data/', ['^demo-data/', '^packages/(client|contract)/'], 'the demo chain goes through the public door'),
    room('tests-through-the-door', '^tests/', ['^tests/', '^packages/(client|contract)/'], 'tests go through the public door', ['^tests/(support|acceptance|bench|security|start|faults|simulator)/']),
    room('acceptance-and-bench', '^tests/(acceptance|bench|security|start|faults)/', ['^tests/', '^packages/(client|contract|diagnosis)/'], 'these may also ask the model'),
    room('support-builds-the-service', '^tests/support/', ['^tests/support/', '^packages/(client|contract)/', '^apps/api/src/(app|config)[.]ts$', '^apps/api/src/(platform|access)/'], 'tests/support builds the service as it is served'),
    room('simulator-apart', '^tests/simulator/', ['^tests/simulator/', '^packages/contract/'], 'the simulator shares no code or constant with the model'),

    // Inside the API: main -> app -> features -> access -> platform; routes -> service -> store.
    never('platform-knows-nobody', '^apps/api/src/platform/', '^apps/api/src/(access|features|start|app[.]ts|main[.]ts)', 'platform knows no feature'),
    never('access-knows-no-feature', '^apps/api/src/access/', '^apps/api/src/(features|start|app[.]ts|main[.]ts)', 'access stands below the features'),
    never('features-below-app', '^apps/api/src/features/', '^apps/api/src/(start|app[.]ts|main[.]ts)', 'features do not know who starts them'),
    never('service-without-http', '^apps/api/src/features/.+/service[.]ts$', '/routes[.]ts$', 'routes -> service, never back'),
    never('store-at-the-bottom', '^apps/api/src/features/.+/store[.]ts$', '^apps/api/src/features/.+/(service|routes)[.]ts$', 'store knows no service'),
    never('routes-not-to-store', '^apps/api/src/features/.+/routes[.]ts$', '^apps/api/src/features/.+/store[.]ts$', 'routes go through the service'),
    {
      name: 'feature-by-its-service',
      comment: 'a feature reaches another only through its service.ts',
      severity: 'error',
      from: { path: '^apps/api/src/features/([^/]+)/', pathNot: [TEST] },
      to: { path: '^apps/api/src/features/[^/]+/', pathNot: ['^apps/api/src/features/$1/', '/service[.]ts$', '^apps/api/src/features/features[.]ts$'] },
    },

    // Inside the model: a room imports only rooms to its left.
    ...leftward(['units', 'physics|knowledge', 'admission|rules|waveform', 'model', 'next-test|repairs|retest|explain']),

    // Inside the web: drawings and parts take data as properties and never fetch.
    never('web-lib-below-routes', '^apps/web/src/lib/', '^apps/web/src/routes/', 'routes -> lib, never back'),
    never('web-drawings-never-fetch', '^apps/web/src/lib/(plan|spread|keypad|ui|format)/', '^(packages/client/|apps/web/src/lib/(api|offline|live|signed-in)/)', 'only offline, live and api talk to the server'),

    { name: 'no-circle', comment: 'no file needs itself', severity: 'error', from: { pathNot: '^apps/api/src/generated/' }, to: { circular: true, viaOnly: { dependencyTypesNot: ['type-only'] } } },
    { name: 'not-resolvable', comment: 'a name that leads nowhere', severity: 'error', from: { pathNot: '^apps/web/' }, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(apps|packages)/[^/]+/(build|[.]svelte-kit|src/generated)/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'], extensions: ['.ts', '.js', '.mjs', '.json', '.svelte'] },
  },
}

function leftward(columns) {
  return columns.slice(0, -1).map((column, at) => {
    const right = columns.slice(at + 1).join('|')
    return never(`diagnosis-left-of-${column.replaceAll('|', '-and-')}`, `^packages/diagnosis/src/(${column})/`, `^packages/diagnosis/src/(${right}|evaluate[.]ts)`, 'a room of the model imports only rooms to its left')
  })
}
