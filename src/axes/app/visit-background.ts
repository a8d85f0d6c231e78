import type { Background } from '../../visit/app/background.ts';
import type { VisitRecord } from '../../visit/record/visit-schema.ts';
import { exchangesOf, secondDrive } from '../history/changes.ts';
import { type Earlier, isMeasuredId, type Sister } from '../history/earlier.ts';
import { sistersOf } from '../history/known.ts';
import { againstPast } from '../history/past.ts';
import { type Axis, axisOfVisit, registerOf } from '../history/register.ts';
import type { AxisNames } from '../record/names.ts';
import { headOf, type VisitReadings } from '../record/visit-digest.ts';
import { axisStore } from '../storage/axis-store.ts';
import { axisTitle } from '../words/axis.ts';
import { besideOf } from '../words/beside.ts';
import { fallInShort, fallText, secondDriveText } from '../words/falls.ts';
import { axisHref, killsDrivesHref } from './route.ts';

/** Earlier visits that are looked at: as many as anybody compares with. */
const visitsLookedAt = 40;
const sistersLookedAt = 6;

/** What the register knows for a visit; undefined if its axis has no name or the storage can't be read. */
export async function visitBackground(visit: VisitRecord): Promise<Background | undefined> {
  const store = axisStore();
  try {
    const stored = await store.load();
    if (!stored.ok) return undefined;
    const others = stored.value.heads.filter(({ id }) => id !== visit.id);
    const register = registerOf(stored.value.records, [...others, headOf(visit)]);
    const axis = axisOfVisit(register, visit);
    if (axis === undefined) return undefined;
    const sisters = sistersOf(register.axes, axis).slice(0, sistersLookedAt);
    const clock = Date.now();
    const ids = [axis, ...sisters].flatMap((one) => earlierIds(one, visit, clock));
    const readings = await store.readings(ids);
    if (!readings.ok) return undefined;
    return backgroundOf(axis, sisters, visit, readings.value, clock);
  } finally {
    store.close();
  }
}

/** `clock`: see `againstPast`. */
export function earlierIds(
  { visits }: Axis,
  { id, createdAt }: Pick<VisitRecord, 'id' | 'createdAt'>,
  clock: number,
): string[] {
  const isEarlier = (at: number) => at <= Date.parse(createdAt) || at > clock;
  const earlier = visits.filter((one) => one.id !== id && isEarlier(Date.parse(one.at)));
  const baselines = earlier.filter(({ baseline }) => baseline).slice(0, 1);
  return [...new Set([...earlier.slice(0, visitsLookedAt), ...baselines].map((one) => one.id))];
}

/** The names of all axes of the register, the last visited first; none if the storage can't be read. */
export async function knownAxes(): Promise<AxisNames[]> {
  const store = axisStore();
  try {
    const stored = await store.load();
    return stored.ok ? registerOf(stored.value.records, stored.value.heads).axes.map(({ names }) => names) : [];
  } finally {
    store.close();
  }
}

export function backgroundOf(
  axis: Axis,
  sisters: readonly Axis[],
  visit: VisitRecord,
  readings: readonly VisitReadings[],
  clock: number,
): Background {
  const sets = new Map(readings.map((one) => [one.id, one.sets]));
  const earlierOf = ({ visits }: Axis): Earlier[] =>
    visits.flatMap((head) => {
      const taken = head.id === visit.id ? undefined : sets.get(head.id);
      return taken === undefined ? [] : [{ visit: head, sets: taken }];
    });
  const own = earlierOf(axis);
  const besides: Sister[] = sisters.map((one) => ({ name: axisTitle(one.names), visits: earlierOf(one) }));
  const exchanges = exchangesOf(axis);
  const drives = secondDrive(exchanges);
  return {
    axis: { href: axisHref(axis.id), title: axisTitle(axis.names) },
    beside: (step) => (isMeasuredId(step) ? besideOf(step, own, besides) : {}),
    against: (evaluated) =>
      againstPast(evaluated.visit, own, exchanges, clock).flatMap(({ step, compared }) =>
        compared.level === 'none' ? [] : [{ step, short: fallInShort[compared.level], text: fallText(compared) }],
      ),
    ...(drives && {
      asks: {
        text: secondDriveText(drives.earlier.on, drives.later.on),
        href: killsDrivesHref,
        link: 'When the second drive fails too',
      },
    }),
  };
}
