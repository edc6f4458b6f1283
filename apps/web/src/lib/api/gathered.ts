/**
 * Makes a fetch run one at a time: calls that come while it runs share one more run after it. An answer that was asked for earlier
 * so never overwrites one that was asked for later.
 */
export function gathered(task: () => Promise<void>): () => Promise<void> {
  let wanted = false
  let running: Promise<void> | undefined
  const run = async (): Promise<void> => {
    try {
      while (wanted) {
        wanted = false
        await task()
      }
    } finally {
      // in the same breath as the last look at `wanted`: a call that came between the two would be lost
      running = undefined
    }
  }
  return () => {
    wanted = true
    return (running ??= run())
  }
}
