import { missingIn, missingWords, type Schedule } from '../../../engine'

/** What the figures of a table stand on, and why some are missing. */
export function ScheduleWords({ schedule }: { schedule: Schedule }) {
  const missing = missingIn(schedule)
  return (
    <section className="words" aria-label="Notes to this table">
      {missing.length > 0 && (
        <>
          <h2>Not known</h2>
          <ul>
            {missing.map((m) => (
              <li key={m.reason}>{missingWords(m)}</li>
            ))}
          </ul>
        </>
      )}
      <h2>What the figures stand on</h2>
      <ul>
        {schedule.notes.map((note) => (
          <li key={note}>{note}</li>
        ))}
        <li>
          Made from the drawing each time it changes. Nothing in it can be typed over, so it cannot be out of
          step.
        </li>
      </ul>
    </section>
  )
}
