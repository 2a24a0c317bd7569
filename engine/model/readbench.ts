import type { z } from 'zod'
import { type Bench, type BenchRecord, NO_BENCH } from './bench'
import { mergeBench } from './benchmerge'
import { builtSchema, deviceSchema, photoSchema, recordSchema, tickSchema, torqueSchema } from './benchschema'
import { foundWords, type Path, type ProblemList } from './problems'
import { isRecord, readRecord } from './record'

/**
 * What was recorded at the bench; undefined: the file has none. A faulty record is left out and told, and costs nothing
 * else. Of two about the same thing the later counts. Records of conductors that the drawing does not have are kept.
 */
export function readBench(data: unknown, problems: ProblemList): Bench | undefined {
  if (data === undefined) return undefined
  if (!isRecord(data)) {
    problems.add(['bench'], 'a record', foundWords(data))
    return undefined
  }
  const conductors = listOf(data.conductors, ['bench', 'conductors'], problems).flatMap(
    (raw, i) => readBenchRecord(raw, ['bench', 'conductors', i], problems) ?? [],
  )
  const torques = entries(torqueSchema, data.torques, ['bench', 'torques'], problems)
  const devices = entries(deviceSchema, data.devices, ['bench', 'devices'], problems)
  return mergeBench(NO_BENCH, { ...data, conductors, torques, devices } as Bench)
}

function readBenchRecord(raw: unknown, path: Path, problems: ProblemList): BenchRecord | null {
  if (!isRecord(raw)) {
    problems.add(path, 'a record', foundWords(raw))
    return null
  }
  const { ticks: rawTicks, built: rawBuilt, photos: rawPhotos, ...rest } = raw
  const head = readRecord(recordSchema, rest, path, problems, () => false)
  if (!head) return null
  const ticks = entries(tickSchema, rawTicks, [...path, 'ticks'], problems)
  const built = entries(builtSchema, rawBuilt, [...path, 'built'], problems)
  const photos = entries(photoSchema, rawPhotos, [...path, 'photos'], problems)
  return { ...head, ticks, built, photos } as BenchRecord
}

/** Records one by one; a faulty one is left out and told. */
const entries = <S extends z.ZodType>(schema: S, data: unknown, path: Path, problems: ProblemList) =>
  listOf(data, path, problems).flatMap(
    (raw, i) => readRecord(schema, raw, [...path, i], problems, () => false) ?? [],
  )

/** A list that may be absent; anything else is told and counts as none. */
function listOf(data: unknown, path: Path, problems: ProblemList): readonly unknown[] {
  if (data === undefined) return []
  if (Array.isArray(data)) return data
  problems.add(path, 'a list', foundWords(data))
  return []
}
