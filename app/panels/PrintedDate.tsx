/** A browser shows a date as its own language does, where 03/04 is two days: here it stands as it is printed. */
export const PrintedDate = ({ date }: { date: string }) =>
  date === '' ? null : <small className="printed-date">Printed {date}</small>
