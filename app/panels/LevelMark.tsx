import type { Level } from '../../engine'

/** Each level has a shape of its own, so that it is told without colour. */
export function LevelMark({ level, size = 16 }: { level: Level; size?: number }) {
  return (
    <svg className={`level ${level}`} viewBox="0 0 16 16" width={size} height={size} aria-hidden>
      {level === 'danger' && (
        <>
          <path className="body" d="M8 1L15.4 14.4H0.6Z" />
          <path className="sign" d="M8 5.6V10M8 12V12.4" />
        </>
      )}
      {level === 'warning' && (
        <>
          <path className="edge" d="M8 1.2L14.8 8L8 14.8L1.2 8Z" />
          <path d="M8 4.8V8.8M8 11V11.3" />
        </>
      )}
      {level === 'note' && (
        <>
          <circle className="edge" cx="8" cy="8" r="6.6" />
          <path d="M8 7.2V11.6M8 4.6V4.9" />
        </>
      )}
      {level === 'not-checked' && (
        <>
          <circle className="edge open" cx="8" cy="8" r="6.6" />
          <path d="M6 6.2C6 3.8 10 3.8 10 6.2C10 7.8 8 7.6 8 9.4M8 11.6V11.8" />
        </>
      )}
    </svg>
  )
}
