/** Runs a task while no other tab of this origin runs one under the same name; where the browser has no locks, just runs it. */
export function alone<T>(name: string, task: () => Promise<T>): Promise<T> {
  const locks = globalThis.navigator?.locks
  return locks ? locks.request(name, task) as Promise<T> : task()
}
