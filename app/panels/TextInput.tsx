import { useEffect, useState } from 'react'

interface Props {
  readonly id?: string
  readonly label?: string
  readonly value: string
  readonly lines?: number
  readonly disabled?: boolean
  readonly placeholder?: string | undefined
  readonly type?: 'text' | 'date'
  readonly onChange: (value: string) => void
}

/** Text that is stored when the person leaves it, as Enter does too: one undo step, not one for each letter. */
export function TextInput({
  id,
  label,
  value,
  lines,
  disabled,
  placeholder,
  type = 'text',
  onChange,
}: Props) {
  const [text, setText] = useState(value)
  useEffect(() => setText(value), [value])
  const commit = () => {
    if (text !== value) onChange(text)
  }
  const shared = {
    id,
    'aria-label': label,
    value: text,
    disabled,
    placeholder,
    autoComplete: 'off',
    onBlur: commit,
  }
  if (lines && lines > 1)
    return <textarea {...shared} rows={lines} onChange={(e) => setText(e.target.value)} />
  return (
    <input
      {...shared}
      type={type}
      onChange={(e) => setText(e.target.value)}
      onKeyDown={(e) => e.key === 'Enter' && e.currentTarget.blur()}
    />
  )
}
