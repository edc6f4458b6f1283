/** What tests of the API need: a service on a database of its own, and a chain of garages with people signed in. */
export { freshDatabase, type TestDatabase } from './database.ts'
export { testService, type TestService } from './service.ts'
export { MANAGER_LIMIT, onTablet, TEST_PASSWORD, TEST_PIN, testApp, testChain, testGarage, testPerson, testTablet } from './chain.ts'
export type { TestApp, TestChain, TestGarage, TestPerson, TestTablet } from './chain.ts'
export { newId } from '../../apps/api/src/platform/ids.ts'
export { INLINE_FOUR, testJob, type TestJob } from './job.ts'
