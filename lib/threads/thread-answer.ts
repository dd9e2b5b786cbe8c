import { parentPort } from 'node:worker_threads'
import { Refused } from '@/shared/refused'

/** What a thread answers: what it read, or the sentence that says why it would not. */
export type ThreadAnswer<Result> =
  { readonly kind: 'read'; readonly result: Result } | { readonly kind: 'refused'; readonly sentence: string }

/** Does the one thing that this thread is for and answers it; what is no refusal ends the thread as an error. */
export async function answerFromThread<Result>(work: () => Result | Promise<Result>): Promise<void> {
  parentPort!.postMessage(await answerOf(work))
}

async function answerOf<Result>(work: () => Result | Promise<Result>): Promise<ThreadAnswer<Result>> {
  try {
    return { kind: 'read', result: await work() }
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', sentence: error.message }
    throw error
  }
}
