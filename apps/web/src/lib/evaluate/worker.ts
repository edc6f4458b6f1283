/// <reference lib="webworker" />
import { evaluate } from '@evenbore/diagnosis'
import type { Question, WorkerAnswer } from './worker-messages.ts'

// A thin switch over the pure package. Cases arrive faster than they are reckoned while somebody types: only the newest counts.
let newest = 0
const answer = (message: WorkerAnswer) => postMessage(message)
/** Lets newer questions be heard before long work begins. */
const breathe = () => new Promise((resolve) => setTimeout(resolve, 0))

async function work(question: Question): Promise<void> {
  await breathe()
  if (question.id !== newest) return
  try {
    answer({ id: question.id, evaluation: evaluate(question.case, undefined, { ranking: false }), ranked: false })
    await breathe()
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
