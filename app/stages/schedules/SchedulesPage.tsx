import '../../theme/schedules.css'
import '../../theme/tables.css'
import { FileDown, Printer, Sheet as SheetIcon } from 'lucide-react'
import { useMemo } from 'react'
import { csvOf, makingOf, SCHEDULES, schedulesOf } from '../../../engine'
import { download } from '../../files/disk'
import { fileName } from '../../files/session'
import { xlsxOf } from '../../print/xlsx'
import { useLatest } from '../../store/latest'
import { useOpen } from '../../store/open'
import { setStage } from '../../store/view'
import { ArticleBook } from './ArticleBook'
import { chooseSchedule, look, useLooking } from './looking'
import { MakingFields } from './MakingFields'
import { OnTheDrawing } from './OnTheDrawing'
import { arranged } from './order'
import { ScheduleTable } from './ScheduleTable'
import { ScheduleWords } from './ScheduleWords'

/** Schedules in which things are bought: they take article numbers and prices. */
const BOUGHT = ['parts', 'lugs']
/** Schedules that hang on how conductors are made up. */
const MADE_UP = ['conductors', 'cut-list', 'cable']

/** Every schedule of the design, generated from the drawing: to sort, to filter, to find on the drawing, to take away. */
export default function SchedulesPage() {
  const design = useOpen((s) => s.design)
  const answers = useLatest((s) => s.answers)
  const checked = useLatest((s) => s.checked)
  const { schedule: key, filter, order, row, entering } = useLooking()

  // Rows speak of the design that the answers speak of: a table is never half old, half new.
  const schedule = useMemo(() => {
    const kind = SCHEDULES.find((s) => s.key === key)
    return kind && answers && checked ? kind.of(checked, answers, makingOf(checked)) : null
  }, [key, answers, checked])
  const rows = useMemo(() => (schedule ? arranged(schedule, filter, order) : []), [schedule, filter, order])
  if (!schedule || !answers || !checked) return <main className="page waiting">Working out the figures…</main>

  const stem = fileName(design).replace(/\.json$/, '')
  const takeCsv = () =>
    download(`${stem}-${schedule.key}.csv`, new Blob([csvOf(schedule)], { type: 'text/csv' }))
  const takeWorkbook = () =>
    download(
      `${stem}-schedules.xlsx`,
      new Blob([xlsxOf(schedulesOf(checked, answers)) as BlobPart], {
        type: 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet',
      }),
    )
  const chosen = rows.find((r) => r.key === row)
  return (
    <main className="page schedules">
      <header>
        <nav className="which" aria-label="Schedules">
          {SCHEDULES.map((s) => (
            <button
              key={s.key}
              type="button"
              aria-current={s.key === key ? 'true' : undefined}
              onClick={() => chooseSchedule(s.key)}
            >
              {s.title}
            </button>
          ))}
        </nav>
        <div className="tools">
          <input
            type="search"
            aria-label={`Filter ${schedule.title.toLowerCase()}`}
            placeholder="Filter: number, part, place, colour…"
            value={filter}
            onChange={(e) => look({ filter: e.target.value })}
          />
          <span className="count" role="status">
            {rows.length === schedule.rows.length
              ? `${rows.length} rows`
              : `${rows.length} of ${schedule.rows.length} rows`}
          </span>
          <span className="grow" />
          {BOUGHT.includes(key) && (
            <ArticleBook
              rows={schedule.rows}
              entering={entering}
              onEntering={(entering) => look({ entering })}
            />
          )}
          <button type="button" className="plain" onClick={takeCsv} title="This table, for a spreadsheet">
            <FileDown size={16} aria-hidden /> CSV
          </button>
          <button type="button" className="plain" onClick={takeWorkbook} title="All tables in one workbook">
            <SheetIcon size={16} aria-hidden /> Workbook
          </button>
          <button type="button" className="plain" onClick={() => setStage('packs')}>
            <Printer size={16} aria-hidden /> On paper
          </button>
        </div>
      </header>
      {MADE_UP.includes(key) && <MakingFields />}
      <div className={chosen ? 'table-and-place' : 'table-and-place alone'}>
        <div className="table-box">
          <ScheduleTable
            key={key}
            schedule={schedule}
            rows={rows}
            order={order}
            chosen={row}
            entering={entering && BOUGHT.includes(key)}
            onOrder={(order) => look({ order })}
            onChoose={(row) => look({ row })}
          />
          {rows.length === 0 && (
            <p className="nothing">
              {schedule.rows.length === 0
                ? 'The drawing holds nothing for this table yet.'
                : `No row holds “${filter}”.`}
            </p>
          )}
          <ScheduleWords schedule={schedule} />
        </div>
        {chosen && <OnTheDrawing row={chosen} onClose={() => look({ row: null })} />}
      </div>
    </main>
  )
}
