import { z } from 'zod'
import { defineCommand } from '@/lib/commands/command'
import { line, worksCode } from '@/lib/commands/inputs'
import { batchRecord, readingsInput, refuseBadReadings, sourceFile } from '@/lib/commands/readings-input'
import { logOfMachine } from '@/lib/commands/logs/log-of-machine'
import { openMachineOf } from '@/lib/commands/works/load-machine'
import { claimFile } from '@/lib/evidence/claim-file'
import { dateAtWorks } from '@/lib/settings/works'
import { numberColumn, type Column } from '@/shared/columns/column'
import { MS_PER_DAY } from '@/shared/quantity/calendar'
import { CHARACTERISTICS, type CharacteristicKey } from '@/shared/records/characteristics'
import type { Characteristic } from '@/shared/records/characteristic'
import { Refused } from '@/shared/refused'

/** Clocks of machines differ a little from the server's. */
const AHEAD_MS = MS_PER_DAY

/** The columns of a log's readings: the instant, and those of its characteristic. */
export const logColumns = (characteristic: Characteristic, nowMs: number): Record<string, Column> => ({
  at: numberColumn({ label: 'The instant', unit: '1', min: 0, max: nowMs + AHEAD_MS }),
  ...characteristic.columns,
})

/** Adds readings to a log, typed in or imported: all of them, or none. */
export const addReadings = defineCommand({
  name: 'add-readings',
  input: z.strictObject({
    machine: worksCode('The machine'),
    /** As the machine calls it: its code, with the programme where it was recorded in one before. */
    log: line('The log', 70),
    readings: readingsInput,
    file: sourceFile,
    /** Which column of the file is which, remembered for the next import. */
    mapping: z.record(z.string(), z.string()).nullable(),
  }),
  load: async (tx, { log, file }, { trailId, actor }) => ({
    machine: await openMachineOf(tx, trailId),
    log: await logOfMachine(tx, trailId, log),
    stored: file ? await claimFile(tx, file, { personId: actor.personId, trailId }) : null,
    twin:
      file &&
      (await tx.readingBatch.findFirst({
        where: { sha256: file, log: { machineId: trailId, code: log } },
        select: { at: true, count: true },
      })),
  }),
  decide({ machine, log, stored, twin }, { log: name, readings, file, mapping }, { now, newId }) {
    if (!log) throw new Refused(`Machine ${machine.code} has no log ${name}.`)
    if (file && !stored)
      throw new Refused('The file did not arrive. Upload it again.', { file: 'Upload it again.' })
    if (twin)
      throw new Refused(
        `This very file was imported on ${dateAtWorks(twin.at)} (${twin.count} readings). Nothing was stored twice.`,
      )
    const characteristic: Characteristic = CHARACTERISTICS[log.characteristic as CharacteristicKey]
    refuseBadReadings(readings, logColumns(characteristic, Date.parse(now)), characteristic.sharesOfWhole)
    const at = readings.columns['at'] as readonly number[]
    const span = at.reduce(
      (found, time) => ({ first: Math.min(found.first, time), last: Math.max(found.last, time) }),
      { first: Infinity, last: -Infinity },
    )
    const batch = newId()
    return {
      change: { batch, logId: log.id, newestAt: new Date(span.last), readings, file, mapping },
      record: {
        machine: machine.code,
        log: name,
        logId: log.id,
        characteristic: log.characteristic,
        first: new Date(span.first).toISOString(),
        last: new Date(span.last).toISOString(),
        ...batchRecord(batch, readings, file, stored),
      },
      result: { machine: machine.code, log: name, readings: readings.count },
    }
  },
  async apply(tx, { batch, logId, newestAt, readings, file, mapping }, { trailId, actor, now }) {
    await tx.readingBatch.create({
      data: {
        id: batch,
        trailId,
        logId,
        count: readings.count,
        newestAt,
        readings: readings as object,
        sha256: file,
        addedById: actor.personId,
        at: now,
      },
    })
    if (mapping) await tx.log.update({ where: { id: logId }, data: { mapping } })
  },
})
