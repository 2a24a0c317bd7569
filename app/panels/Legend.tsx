import { LEVEL_WORDS } from '../../engine'
import { LEVELS } from '../store/tally'
import { LevelMark } from './LevelMark'

const LINES = [
  ['positive', 'Positive'],
  ['negative', 'Negative: drawn hollow'],
  ['other', 'Between devices'],
  ['data', 'Data link: dashed'],
  ['mains', 'Mains: licensed persons only'],
] as const

/** What the lines and marks on the sheet mean. */
export function Legend() {
  return (
    <div className="legend">
      <h3>On the sheet</h3>
      <ul>
        {LINES.map(([nature, text]) => (
          <li key={nature}>
            <svg viewBox="0 0 12 4" width="48" height="16" aria-hidden>
              <g className={`run ${nature}`}>
                <path className="line" d="M0 2H12" />
                {nature === 'negative' && <path className="core" d="M0 2H12" />}
              </g>
            </svg>
            {text}
          </li>
        ))}
        <li>
          <svg viewBox="0 0 12 4" width="48" height="16" aria-hidden>
            <g className="run positive">
              <path className="line" d="M0 2H12" />
              <path className="tick" d="M4.4 3.5L5.6 0.5M6.4 3.5L7.6 0.5" />
            </g>
          </svg>
          Feed and return as one line
        </li>
        {LEVELS.map((level) => (
          <li key={level}>
            <LevelMark level={level} /> {LEVEL_WORDS[level]}
          </li>
        ))}
      </ul>
    </div>
  )
}
