import type { ArrangeColumn, ArrangeLink, ArrangePart, ArrangePort } from '../../engine/sheets/arrange/part'

/** An invented van of everyday shape as boxes and links: about 60 parts and 150 conductors, both poles drawn. */
export interface Drawing {
  readonly parts: readonly ArrangePart[]
  readonly links: readonly ArrangeLink[]
}

type Port = readonly [id: string, side: ArrangePort['side'], x: number, y: number]

export function vanDrawing(): Drawing {
  const parts: ArrangePart[] = []
  const links: ArrangeLink[] = []
  const add = (id: string, column: ArrangeColumn, w: number, h: number, ports: readonly Port[]): string => {
    parts.push({ id, column, w, h, ports: ports.map(([key, side, x, y]) => ({ id: key, side, x, y })) })
    return id
  }
  const link = (from: string, to: string, weight = 1): void => {
    const end = (s: string) => ({ part: s.slice(0, s.indexOf(':')), port: s.slice(s.indexOf(':') + 1) })
    links.push({ from: end(from), to: end(to), weight })
  }
  const bar = (id: string, studs: number): string =>
    add(
      id,
      'distribution',
      5,
      5 * studs,
      Array.from({ length: studs }, (_, i) => i).flatMap((i) => [
        [`${i + 1}l`, 'left', 0, 5 * i + 2.5] as const,
        [`${i + 1}r`, 'right', 5, 5 * i + 2.5] as const,
      ]),
    )
  const block = (id: string, ways: number): string =>
    add(id, 'distribution', 37.5, 5 * ways, [
      ['in', 'left', 0, 2.5],
      ...Array.from({ length: ways }, (_, i) => [`${i + 1}`, 'right', 37.5, 5 * i + 2.5] as const),
    ])
  const inLine = (id: string, column: ArrangeColumn, w = 15, h = 10): string =>
    add(id, column, w, h, [
      ['1', 'left', 0, 5],
      ['2', 'right', w, 5],
    ])
  const load = (id: string): string =>
    add(id, 'load', 15, 12.5, [
      ['+', 'left', 0, 2.5],
      ['-', 'left', 0, 10],
    ])
  const battery = (id: string): string =>
    add(id, 'store', 15, 12.5, [
      ['+', 'right', 15, 2.5],
      ['-', 'right', 15, 10],
    ])

  for (const id of ['G1', 'G2', 'G3']) battery(id)
  inLine('F1', 'protection')
  inLine('Q1', 'switching')
  inLine('B1', 'switching', 25, 12.5)
  inLine('B2', 'switching', 25, 12.5)
  bar('W+', 8)
  bar('W-', 8)
  bar('WL', 10)
  for (const [k, id] of ['G1', 'G2', 'G3'].entries()) {
    inLine(`F1${k + 1}`, 'protection')
    link(`${id}:+`, `F1${k + 1}:1`, 3)
    link(`F1${k + 1}:2`, 'F1:1', 3)
    link(`B1:1`, `${id}:-`, 3)
  }
  link('F1:2', 'Q1:1', 3)
  link('Q1:2', 'W+:1l', 3)
  link('W-:1l', 'B1:2', 3)
  link('B2:1', 'W-:1r', 3)
  link('WL:1l', 'B2:2', 3)

  const ways = [12, 10, 8]
  ways.forEach((n, b) => {
    block(`FB${b + 1}`, n)
    inLine(`F2${b + 1}`, 'protection')
    link(`W+:${b + 2}r`, `F2${b + 1}:1`, 2)
    link(`F2${b + 1}:2`, `FB${b + 1}:in`, 2)
    bar(`WR${b + 1}`, n)
    link(`WR${b + 1}:1l`, `WL:${b + 2}r`, 2)
    for (let i = 1; i <= n; i++) {
      const id = load(`E${b + 1}${String(i).padStart(2, '0')}`)
      link(`${id}:-`, `WR${b + 1}:${i}r`)
      if (b === 1 && i <= 4) {
        add(`K${i}`, 'switching', 20, 15, [
          ['30', 'left', 0, 2.5],
          ['87', 'right', 20, 2.5],
          ['86', 'left', 0, 12.5],
          ['85', 'right', 20, 12.5],
        ])
        inLine(`S${i}`, 'switching')
        link(`FB2:${i}`, `K${i}:30`)
        link(`K${i}:87`, `${id}:+`)
        link(`FB3:${(i % 8) + 1}`, `S${i}:1`)
        link(`S${i}:2`, `K${i}:86`)
        link(`K${i}:85`, `WR2:${i}l`)
      } else link(`FB${b + 1}:${i}`, `${id}:+`)
    }
  })

  for (let k = 1; k <= 3; k++) {
    add(`PV${k}`, 'source', 20, 15, [
      ['+', 'right', 20, 2.5],
      ['-', 'right', 20, 12.5],
    ])
    inLine(`FP${k}`, 'protection')
    add(`T${k}`, 'source', 20, 15, [
      ['p+', 'left', 0, 2.5],
      ['p-', 'left', 0, 12.5],
      ['b+', 'right', 20, 2.5],
      ['b-', 'right', 20, 12.5],
      ['d', 'down', 10, 15],
    ])
    inLine(`FT${k}`, 'protection')
    link(`PV${k}:+`, `FP${k}:1`)
    link(`FP${k}:2`, `T${k}:p+`)
    link(`T${k}:p-`, `PV${k}:-`)
    link(`T${k}:b+`, `FT${k}:1`)
    link(`FT${k}:2`, `W+:${k + 4}l`)
    link(`W-:${k + 2}l`, `T${k}:b-`)
  }
  add('T4', 'source', 25, 20, [
    ['+', 'right', 25, 5],
    ['-', 'right', 25, 15],
    ['d', 'down', 12.5, 20],
  ])
  inLine('FT4', 'protection')
  link('T4:+', 'FT4:1', 3)
  link('FT4:2', 'W+:8l', 3)
  link('W-:8l', 'T4:-', 3)

  add('D1', 'data', 25, 30, [
    ['1', 'right', 25, 5],
    ['2', 'right', 25, 10],
    ['3', 'right', 25, 15],
    ['4', 'right', 25, 20],
    ['5', 'right', 25, 25],
  ])
  for (let k = 1; k <= 4; k++) {
    add(`BT${k}`, 'data', 15, 10, [['d', 'left', 0, 5]])
    link(`D1:${k}`, `BT${k}:d`)
  }
  link('T1:d', 'D1:5')
  return { parts, links }
}
