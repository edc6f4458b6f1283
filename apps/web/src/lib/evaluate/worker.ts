/// <reference lib="webworker" />
import { evaluate } from '@evenbore/diagnosis'
import type { Question, WorkerAnswer } from './worker-messages.ts'

// A thin switch over the pure package. Cases arrive faster than they are reckoned while somebody types: only the newest counts.
let newest = 0
const answer = (message: WorkerAnswer) => postMessage(message)
/** The ranking of next tests waits this long: it holds the worker for much longer than the verdict, and the next value may be on its way. */
const PAUSE_MS = 120
/** Lets newer questions be heard before long work begins. */
const breathe = (ms = 0) => new Promise((resolve) => setTimeout(resolve, ms))

async function work(question: Question): Promise<void> {
  await breathe()
  if (question.id !== newest) return
  try {
    answer({ id: question.id, evaluation: evaluate(question.case, undefined, { ranking: false }), ranked: false })
    await breathe(PAUSE_MS)
    if (question.id !== newest || question.id === 0) return
    answer({ id: question.id, evaluation: evaluate(question.case), ranked: true })
  } catch (error) {
    answer({ id: question.id, failed: error instanceof Error ? error.message : String(error) })
  }
}

addEventListener('message', ({ data }: MessageEvent<Question>) => {
  newest = data.id
  void work(data)
})
