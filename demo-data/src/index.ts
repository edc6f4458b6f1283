/** The invented chain: data, and the loader that posts it through the real API as the demo people. */
export { loadAccounts, type DemoAccounts, type Access } from './accounts.ts'
export { loadJobs } from './jobs.ts'
export * as chain from './chain/index.ts'
