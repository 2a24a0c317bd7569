/** Fractional parts of the square roots (start) and cube roots (round constants) of the first primes: FIPS 180-4. */
const primes = (count: number): number[] => {
  const found: number[] = []
  for (let n = 2; found.length < count; n++) if (found.every((p) => n % p !== 0)) found.push(n)
  return found
}

const fraction = (root: number): number => Math.floor((root - Math.floor(root)) * 2 ** 32)
const ROUNDS = Uint32Array.from(primes(64), (p) => fraction(Math.cbrt(p)))
const START = Uint32Array.from(primes(8), (p) => fraction(Math.sqrt(p)))

const turned = (x: number, by: number): number => (x >>> by) | (x << (32 - by))

/**
 * Digest of bytes by SHA-256 (FIPS 180-4), as 64 hexadecimal digits. Tells damage; it is no signature. Linear; about
 * 10 ms a megabyte.
 */
export function sha256(bytes: Uint8Array): string {
  const blocks = Math.ceil((bytes.length + 9) / 64)
  const padded = new Uint8Array(blocks * 64)
  padded.set(bytes)
  padded[bytes.length] = 0x80
  const view = new DataView(padded.buffer)
  view.setUint32(padded.length - 8, Math.floor(bytes.length / 2 ** 29))
  view.setUint32(padded.length - 4, bytes.length << 3)
  const state = START.slice()
  const words = new Uint32Array(64)
  for (let block = 0; block < blocks; block++) mix(state, words, view, block * 64)
  return [...state].map((word) => word.toString(16).padStart(8, '0')).join('')
}

function mix(state: Uint32Array, w: Uint32Array, view: DataView, at: number): void {
  for (let i = 0; i < 16; i++) w[i] = view.getUint32(at + 4 * i)
  for (let i = 16; i < 64; i++) {
    const [x, y] = [w[i - 15]!, w[i - 2]!]
    const s0 = turned(x, 7) ^ turned(x, 18) ^ (x >>> 3)
    const s1 = turned(y, 17) ^ turned(y, 19) ^ (y >>> 10)
    w[i] = w[i - 16]! + s0 + w[i - 7]! + s1
  }
  let [a, b, c, d, e, f, g, h] = state as unknown as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ]
  for (let i = 0; i < 64; i++) {
    const s1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25)
    const t1 = (h + s1 + ((e & f) ^ (~e & g)) + ROUNDS[i]! + w[i]!) | 0
    const s0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22)
    const t2 = (s0 + ((a & b) ^ (a & c) ^ (b & c))) | 0
    ;[h, g, f, e, d, c, b, a] = [g, f, e, (d + t1) | 0, c, b, a, (t1 + t2) | 0]
  }
  ;[a, b, c, d, e, f, g, h].forEach((value, i) => {
    state[i] = state[i]! + value
  })
}
