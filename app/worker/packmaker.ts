import type { Asked, PackAsk, PackFile, PackTell, PackWish, Told } from './packtalk'

type OnPack = (told: Extract<PackTell, { readonly is: 'progress' | 'made' | 'failed' }>) => void

interface Waiting {
  readonly resolve: (told: PackTell) => void
  readonly reject: (error: Error) => void
}

/** Thrown at those who wait for a page or a file when the work is stopped. */
export class Stopped extends Error {
  constructor() {
    super('Stopped.')
  }
}

/** Makes packs in a worker: one wish at a time, the newest; stopping ends the worker itself, whatever it is at. */
export class PackMaker {
  private worker: Worker | null = null
  private seq = 0
  private making = 0
  private readonly waiting = new Map<number, Waiting>()

  constructor(private readonly onPack: OnPack) {}

  make(wish: PackWish): void {
    this.making = this.post({ is: 'make', wish })
  }

  async sheet(index: number): Promise<string> {
    const told = await this.ask({ is: 'sheet', index })
    if (told.is !== 'sheet') throw new Error('no page came back')
    return told.svg
  }

  async file(file: PackFile): Promise<Uint8Array> {
    const told = await this.ask({ is: 'file', file })
    if (told.is !== 'file') throw new Error('no file came back')
    return told.bytes
  }

  /** Ends the worker; what was made in it is gone. */
  stop(): void {
    this.worker?.terminate()
    this.worker = null
    this.making = 0
    this.rejectAll(new Stopped())
  }

  private ask(ask: PackAsk): Promise<PackTell> {
    const seq = this.post(ask)
    return new Promise((resolve, reject) => this.waiting.set(seq, { resolve, reject }))
  }

  private post(ask: PackAsk): number {
    const asked: Asked = { seq: ++this.seq, ask }
    this.worker ??= this.begin()
    this.worker.postMessage(asked)
    return asked.seq
  }

  private begin(): Worker {
    const worker = new Worker(new URL('./pack.worker.ts', import.meta.url), { type: 'module' })
    worker.onmessage = (e: MessageEvent<Told>) => this.take(e.data)
    worker.onerror = (e) => {
      const why = e.message || 'The page could not load what does this work.'
      this.stop()
      this.onPack({ is: 'failed', why })
    }
    return worker
  }

  private take({ seq, tell }: Told): void {
    const waiting = this.waiting.get(seq)
    if (waiting) {
      this.waiting.delete(seq)
      if (tell.is === 'failed') waiting.reject(new Error(tell.why))
      else waiting.resolve(tell)
    } else if (seq === this.making && tell.is !== 'sheet' && tell.is !== 'file') this.onPack(tell)
  }

  private rejectAll(error: Error): void {
    for (const { reject } of this.waiting.values()) reject(error)
    this.waiting.clear()
  }
}
