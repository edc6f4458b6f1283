import { availableParallelism } from 'node:os'
import { Worker } from 'node:worker_threads'
import { type Line, splitLines } from './split-lines.ts'

/** Lines given to a worker at once: enough to hide the hand-over, few enough to keep every core busy to the end. */
const BATCH = 8
/** Batches read ahead of the oldest unanswered one, for each worker: bounds the memory. */
const AHEAD = 4

interface Output {
  write(text: string): boolean
  once(event: 'drain', listener: () => void): unknown
}

/** Answers one case a line, in order, computing on every core. Blank lines are skipped. Ends when the input ends. */
export async function answerLines(input: AsyncIterable<Uint8Array>, output: Output, cores = availableParallelism()): Promise<void> {
  const pool = new WorkerPool(cores)
  // the printing of each batch still in flight, oldest first
  const inFlight: Promise<void>[] = []
  let printed = Promise.resolve()
  const print = async (before: Promise<void>, answering: Promise<string[]>): Promise<void> => {
    const [answers] = await Promise.all([answering, before])
    if (!output.write(`${answers.join('\n')}\n`)) await new Promise<void>((resume) => output.once('drain', resume))
  }
  try {
    for await (const lines of splitLines(input)) {
      for (let from = 0; from < lines.length; from += BATCH) {
        // printed as soon as it and all before it are ready, even while the input stays open
        printed = print(printed, pool.answer(lines.slice(from, from + BATCH)))
        printed.catch(() => {})
        inFlight.push(printed)
        if (inFlight.length >= cores * AHEAD) await inFlight.shift()
      }
    }
    await printed
  } finally {
    await pool.end()
  }
}

interface Job {
  readonly lines: Line[]
  readonly done: (answers: string[]) => void
  readonly failed: (error: unknown) => void
}

/** Workers that are started when there is work for them and take batches in turn. */
class WorkerPool {
  readonly #most: number
  readonly #workers: Worker[] = []
  readonly #idle: Worker[] = []
  readonly #waiting: Job[] = []

  constructor(most: number) {
    this.#most = Math.max(1, most)
  }

  answer(lines: Line[]): Promise<string[]> {
    return new Promise((done, failed) => {
      this.#waiting.push({ lines, done, failed })
      this.#next()
    })
  }

  #next(): void {
    while (this.#waiting.length > 0) {
      const worker = this.#idle.pop() ?? (this.#workers.length < this.#most ? this.#start() : undefined)
      if (!worker) return
      this.#give(worker, this.#waiting.shift()!)
    }
  }

  #start(): Worker {
    const worker = new Worker(new URL('./line-worker.ts', import.meta.url))
    this.#workers.push(worker)
    return worker
  }

  #give(worker: Worker, job: Job): void {
    const finish = (): void => {
      worker.off('message', answered)
      worker.off('error', broke)
    }
    const answered = (answers: string[]): void => {
      finish()
      this.#idle.push(worker)
      job.done(answers)
      this.#next()
    }
    const broke = (error: unknown): void => {
      finish()
      job.failed(error)
    }
    worker.on('message', answered)
    worker.on('error', broke)
    worker.postMessage(job.lines)
  }

  async end(): Promise<void> {
    await Promise.all(this.#workers.map((worker) => worker.terminate()))
  }
}
