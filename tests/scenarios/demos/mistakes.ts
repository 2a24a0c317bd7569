import { apply } from '../../../engine/edit/apply'
import type { Edit } from '../../../engine/edit/edit'
import type { Design } from '../../../engine/model/design'
import type { Row, Value } from '../../../engine/model/fields'
import { newConductor } from '../../../engine/model/newdesign'
import { conductorNumbered, partNamed } from '../../build'
import { vetVanAsDrawn } from './vetvan'

/** One planted mistake, in words for a person and as the finding that it must give. */
export interface Mistake {
  readonly what: string
  readonly rule: string
  /** Designations and conductor numbers that the finding must name. */
  readonly names: readonly string[]
}

export const MISTAKES: readonly Mistake[] = [
  { what: 'the centrifuge returns to the source negative bar', rule: 'M1', names: ['E5', 'B2'] },
  { what: 'the front solar controller returns to the load return bar', rule: 'M2', names: ['T1', 'B2'] },
  { what: 'a tracker is tapped straight off battery 2', rule: 'P1', names: ['W201'] },
  { what: 'the table lift has a return of 1.5 mm² behind a 25 A fuse', rule: 'P5', names: ['W72'] },
  { what: 'the rear array has four modules in series', rule: 'V1', names: ['T2'] },
  { what: 'the loads master relay is rated 70 A', rule: 'S1', names: ['K1'] },
  { what: 'the second data expander has two ports', rule: 'L1', names: ['T3'] },
  { what: 'the feed of the ceiling light has no length', rule: 'D1', names: ['W57'] },
  { what: 'the fuses of the always-on block interrupt 1 kA', rule: 'K1', names: ['F6'] },
  { what: 'the breaker of the awning array is rated 24 V', rule: 'U1', names: ['F13'] },
  { what: 'the fuse of battery 2 is slow', rule: 'K3', names: ['F2'] },
  { what: 'the fuse of the alternator charger is of a class without limits', rule: 'K5', names: ['F10'] },
  { what: 'the entry step draws six times its current for a second', rule: 'F2', names: ['F7', 'M14'] },
  { what: 'the heater has a fuse of 10 A', rule: 'F3', names: ['F5'] },
  { what: 'the ceiling light has a fuse of 8 A', rule: 'F4', names: ['F5'] },
  { what: 'a way of the charging block may hold 40 A', rule: 'F5', names: ['F4'] },
  { what: 'the awning controller wants 20 V', rule: 'V2', names: ['G7', 'T3'] },
  { what: 'the modules of the awning bear 8 A', rule: 'V3', names: ['G7'] },
  { what: 'the awning feed is 2.5 mm² in a bunch of four', rule: 'V4', names: ['W34'] },
  { what: 'the front controller may see 9 A', rule: 'V5', names: ['T1', 'G5'] },
  { what: 'battery 1 may be charged with 60 A', rule: 'R1', names: ['G1', 'G2'] },
  { what: 'battery 2 is an AGM', rule: 'R2', names: ['G1', 'G2'] },
  { what: 'the drug safe alarm is for 24 V', rule: 'R3', names: ['E8'] },
  { what: 'the waste pump relay has a coil of 24 V', rule: 'R5', names: ['K3'] },
  { what: 'the alternator fuse states its breaking capacity at 14 V', rule: 'U2', names: ['F9'] },
  { what: 'the alternator gives 35 A', rule: 'R4', names: ['G4', 'T4'] },
  { what: 'how the entry step is fastened is not stated', rule: 'J11', names: ['M14'] },
  { what: 'the load return bar has studs of M5', rule: 'J9', names: ['W22', 'W4'] },
]

/** The veterinary van with one mistake of each kind planted. */
export function mistakes(): Design {
  const clean = vetVanAsDrawn()
  return {
    ...planted(clean),
    id: 'demo-mistakes',
    settings: { ...clean.settings, name: 'Veterinary van with planted mistakes', revision: 'X' },
  }
}

function planted(clean: Design): Design {
  const part = (designation: string): string => partNamed(clean, designation).id
  /** The conductor between two parts. */
  const between = (a: string, b: string, terminal: string): string => {
    const found = clean.conductors.find(
      (c) =>
        [c.from, c.to].some((t) => t.part === part(a) && t.terminal === terminal) &&
        [c.from, c.to].some((t) => t.part === part(b)),
    )
    if (!found) throw new Error(`nothing joins ${a} ${terminal} to ${b}`)
    return found.id
  }
  const tracker = {
    ...partNamed(clean, 'E8'),
    id: 'p901',
    designation: 'E31',
    name: 'Tracker',
    location: 'battery bay',
    values: { ...partNamed(clean, 'E8').values, currentA: 0.4 },
  }
  const tap = {
    ...newConductor('c901', 'W201', { part: part('G2'), terminal: '+' }, { part: 'p901', terminal: '+' }),
    size: '1mm2',
    lengthM: 1.4,
    colour: 'RD',
  }
  const tapReturn = {
    ...newConductor('c902', 'W202', { part: 'p901', terminal: '-' }, { part: part('W4'), terminal: '19r' }),
    size: '1mm2',
    lengthM: 2.2,
    colour: 'BN',
    returnOf: 'c901',
  }
  const set = (designation: string, field: string, value: Value): Edit => ({
    do: 'value',
    part: part(designation),
    field,
    value,
  })
  const ways = partNamed(clean, 'F5').values.ways as readonly Row[]
  const loadsWays = ways.map((way, i) =>
    i === 1 ? { ...way, ratingA: 8 } : i === 6 ? { ...way, ratingA: 10 } : way,
  )
  const edits: Edit[] = [
    {
      do: 'reconnect',
      conductor: between('E5', 'W4', '-'),
      end: 'to',
      to: { part: part('W3'), terminal: '6l' },
    },
    {
      do: 'reconnect',
      conductor: between('T1', 'W3', 'bat-'),
      end: 'to',
      to: { part: part('W4'), terminal: '19l' },
    },
    { do: 'add', parts: [tracker], conductors: [tap, tapReturn] },
    { do: 'conductor', conductors: [between('M4', 'W4', '-')], set: { size: '1.5mm2' } },
    { do: 'value', part: part('G6'), field: 'series', value: 4 },
    { do: 'value', part: part('G6'), field: 'parallel', value: 1 },
    { do: 'value', part: part('K1'), field: 'ratingA', value: 70 },
    { do: 'remove', parts: [], conductors: [between('T3', 'K12', 'data')] },
    { do: 'value', part: part('K12'), field: 'ports', value: 2 },
    { do: 'conductor', conductors: [between('E2', 'F5', '+')], set: { lengthM: null } },
    set('F6', 'breakingKA', 1),
    set('F13', 'voltageV', 24),
    set('F2', 'clearsTimes', 10),
    set('F10', 'class', 'other'),
    set('M14', 'inrush', 6),
    set('M14', 'inrushS', 1),
    set('F5', 'ways', loadsWays),
    set('F4', 'wayMaxA', 40),
    set('T3', 'pvMinV', 20),
    set('G7', 'maxFuseA', 8),
    { do: 'conductor', conductors: [between('G7', 'X1', '+')], set: { size: '2.5mm2', bunched: 4 } },
    set('T1', 'pvMaxA', 9),
    set('G1', 'chargeA', 60),
    set('G2', 'chemistry', 'agm'),
    set('E8', 'ratedV', 24),
    set('K3', 'coilV', 24),
    set('F9', 'breakingV', 14),
    set('G4', 'ratedA', 35),
    set('W4', 'stud', 'M5'),
    set('M14', 'fitting', 'unknown'),
  ]
  const result = apply(clean, { do: 'all', edits })
  if (result.refused) throw new Error(result.why)
  return result.design
}

/** Numbers of the planted conductors, for reading a finding. */
export const numbered = (d: Design, number: string): string => conductorNumbered(d, number).id
