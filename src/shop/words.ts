import { visitTitle } from '../visit/app/visit-summary.ts';
import type { VisitRecord } from '../visit/record/visit-schema.ts';
import type { SyncReport } from './merge/sync.ts';

export const shopTexts = {
  lead: 'Several tablets, one set of visits: over a folder that all of them reach, or over files. Nothing is sent by this site; whatever keeps your folder carries them.',
  noFolder:
    'This browser can’t keep a folder open. Use the files below: put them into your folder by hand, or send them.',
  folderHint:
    'A folder on a file server, or one that a synchronising client keeps. Each tablet chooses it once. A visit is one file in it.',
  noPermission: 'The browser asks again for permission to use the folder. Tap to exchange.',
  filesHint:
    'All visits of this device, with those that were deleted, and the register of axes. Another tablet reads the file and merges it.',
  importHint:
    'A file of another tablet, or several files of the shared folder. What was changed here stays. What was deleted there, and not changed here since, is deleted here too. What was deleted or taken off here after the file was written does not come back with it.',
  csvHint: 'One row a reading, for a spreadsheet: what was typed, its figure in SI units, time, step and verdict.',
  apart:
    'changed on two devices without sight of each other. Both versions are kept; the second one is marked in the list of visits. Compare them, then delete the one that is wrong.',
  keptAfterDeletion: 'deleted on one device and changed on another after that. It is kept.',
  busy: 'being changed while this ran. It takes part in the next exchange.',
} as const;

const visits = (count: number) => `${count} ${count === 1 ? 'visit' : 'visits'}`;

const axes = (count: number) => `${count} ${count === 1 ? 'axis' : 'axes'}`;

/** What an exchange did, in one sentence. Into files that a person chose nothing is written. */
export function exchangeSentence(report: SyncReport, withWhat: 'folder' | 'files'): string {
  const { stored, removed, written, storedAxes, writtenAxes } = report;
  const toFiles = [written > 0 && visits(written), writtenAxes > 0 && axes(writtenAxes)].filter(Boolean).join(' and ');
  const parts = [
    storedAxes > 0 && `${axes(storedAxes)} of the register united`,
    stored.length > 0 && `${visits(stored.length)} taken over`,
    removed.length > 0 && `${visits(removed.length)} deleted that another device had deleted`,
    toFiles !== '' &&
      (withWhat === 'folder'
        ? `${toFiles} written`
        : `${toFiles} of this device not in those files: export everything for the other tablet`),
  ].filter(Boolean);
  return parts.length === 0 ? 'Nothing was new on either side.' : `${parts.join(', ')}.`;
}

/**
 * What files that a person chose hold and did not bring back. Not for a folder: older states always lie in it. `titles`:
 * see `exchangeNotices`.
 */
export function takenAwayNotices({ takenAway }: SyncReport, titles: ReadonlyMap<string, VisitRecord>): string[] {
  const { visits: deleted, photographs } = takenAway;
  const stays = (count: number, one: string, many: string) => (count === 1 ? one : many);
  return [
    ...photographs.map(([id, count]) => {
      const visit = titles.get(id);
      const name = visit === undefined ? 'A visit' : visitTitle(visit);
      return `${name}: ${count} ${stays(count, 'photograph', 'photographs')} of the files ${stays(count, 'was', 'were')} taken off after they were written. ${stays(count, 'It stays', 'They stay')} off.`;
    }),
    ...(deleted > 0
      ? [
          `${visits(deleted)} of the files ${stays(deleted, 'was', 'were')} deleted after they were written, and ${stays(deleted, 'stays', 'stay')} deleted.`,
        ]
      : []),
  ];
}

/** What a person has to know or do after an exchange. `titles`: of the visits on this device, by id. */
export function exchangeNotices(report: SyncReport, titles: ReadonlyMap<string, VisitRecord>): string[] {
  const name = (id: string) => {
    const visit = titles.get(id);
    return visit === undefined ? 'A visit' : visitTitle(visit);
  };
  return [
    ...report.apart.map(({ id }) => `${name(id)}: ${shopTexts.apart}`),
    ...report.keptAfterDeletion.map((id) => `${name(id)}: ${shopTexts.keptAfterDeletion}`),
    ...report.problems.map(({ name: file, problem }) => `${file}: ${problem.message} Nothing was changed by it.`),
    ...(report.busy > 0 ? [`${visits(report.busy)}: ${shopTexts.busy}`] : []),
  ];
}
