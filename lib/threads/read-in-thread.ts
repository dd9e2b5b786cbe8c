import { join } from 'node:path'
import { Worker, type WorkerOptions } from 'node:worker_threads'
import { Refused } from '@/shared/refused'
import type { ThreadAnswer } from './thread-answer'

/** However hostile what is read, its reading ends here, and takes no more memory than this. */
export interface ThreadLimits {
  readonly milliseconds: number
  readonly heapMiB: number
}

/** A reading for a thread of its own. */
interface ThreadTask {
  /** The program that starts it, below `lib`. */
  readonly program: readonly string[]
  readonly given: unknown
  readonly limits: ThreadLimits
  /** What is said of a reading that takes too long, or too much. */
  readonly refusals: { readonly late: string; readonly tooMuch: string }
}

/**
 * Reads in a thread of its own, so that whoever else asks for a page meanwhile gets it as soon as ever.
 * Errors: Refused, where the thread refuses or its reading takes too long or too much.
 */
export function readInThread<Result>({ program, given, limits, refusals }: ThreadTask): Promise<Result> {
  return new Promise((resolve, reject) => {
    const worker = startThread(program, {
      workerData: given,
      resourceLimits: { maxOldGenerationSizeMb: limits.heapMiB },
    })
    const late = setTimeout(() => {
      void worker.terminate()
      reject(new Refused(refusals.late))
    }, limits.milliseconds)
    worker.once('message', (answer: ThreadAnswer<Result>) => {
      if (answer.kind === 'read') resolve(answer.result)
      else reject(new Refused(answer.sentence))
    })
    worker.once('error', (error) =>
      reject(
        'code' in error && error.code === 'ERR_WORKER_OUT_OF_MEMORY' ? new Refused(refusals.tooMuch) : error,
      ),
    )
    worker.once('exit', () => clearTimeout(late))
  })
}

/** The bundler would follow `new Worker` and fail on what reads TypeScript: the thread is Node's own affair. */
const startThread = (program: readonly string[], options: WorkerOptions): Worker =>
  Reflect.construct(Worker, [join(process.cwd(), 'lib', ...program), options]) as Worker
