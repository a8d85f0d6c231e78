import { useEffect, useRef, useState } from 'preact/hooks';
import { isUntouched } from '../../kernel/form/field.ts';
import type { FormState } from '../../ui/form/use-form.ts';
import { fileFields } from './fields.ts';
import type { DecimalMark } from './read/number-cell.ts';
import type { SettingsProblems } from './read/settings.ts';
import type { TripTraceAssessment } from './rule/input.ts';
import type { TraceClient } from './trace-client.ts';
import type { Opened, OpenedFile, Progress } from './trace-session.ts';

export interface TraceFileState {
  /** The file that is open; its samples are not kept beyond this page. */
  file: OpenedFile | undefined;
  progress: Progress | undefined;
  /** Why a file was not read. The entries stay as they were. */
  refused: Extract<Opened, { ok: false }> | undefined;
  /** What the answers about the file lack, by their fields. */
  problems: SettingsProblems;
  open: (file: File) => void;
}

/** Opens files and measures them again with each answer that settles. The figures go into the form as an entry of their own. */
export function useTraceFile(form: FormState<TripTraceAssessment>): TraceFileState {
  const client = useRef<Promise<TraceClient>>();
  const chosen = useRef<File>();
  const turn = useRef(0);
  const [file, setFile] = useState<OpenedFile>();
  const [progress, setProgress] = useState<Progress>();
  const [refused, setRefused] = useState<TraceFileState['refused']>();
  const [problems, setProblems] = useState<SettingsProblems>({});
  const { settled } = form;
  const answers = fileFields.map(({ id }) => settled[id] ?? '').join('\n');

  // Its script is loaded with the first file.
  const ready = () => {
    client.current ??= import('./trace-client.ts').then(({ traceClient }) => traceClient());
    return client.current;
  };
  const read = async (next: File, mark: DecimalMark | undefined, keep: boolean) => {
    const mine = ++turn.current;
    chosen.current = next;
    setRefused(undefined);
    setProgress({ share: 0, rows: 0 });
    const opened = await ready()
      .then((one) => one.open(next, next.name, mark, (now) => mine === turn.current && setProgress(now)))
      .catch((): Opened => ({ ok: false, problem: 'unreadable' }));
    if (mine !== turn.current) return;
    setProgress(undefined);
    if (!opened.ok) {
      setRefused(opened);
      return;
    }
    setFile(opened.file);
    if (keep) return;
    form.fill({ ...form.typed, trace: '', tripTime: '', ...opened.file.proposal }, `Opened: ${next.name}.`);
  };

  // The mark of the decimals is an answer to how the file is read.
  const mark = settled.decimalMark;
  const [markRead, setMarkRead] = useState('');
  useEffect(() => {
    if (chosen.current === undefined || mark === markRead) return;
    setMarkRead(mark ?? '');
    if (mark === '.' || mark === ',') void read(chosen.current, mark, file !== undefined);
  }, [mark]);

  useEffect(() => {
    if (file === undefined) return;
    if (isUntouched(fileFields, settled)) {
      // The form was cleared: the file goes with it.
      setFile(undefined);
      setProblems({});
      return;
    }
    let current = true;
    const measure = async () => {
      const measured = await (await ready()).measure(settled);
      if (!current || measured === undefined) return;
      setProblems(measured.ok ? {} : measured.problems);
      const text = measured.ok ? measured.kept : '';
      if (text !== form.typed.trace) form.choose('trace', text);
    };
    void measure();
    return () => {
      current = false;
    };
  }, [file, answers]);

  useEffect(() => () => void client.current?.then((one) => one.close()), []);

  const open = (next: File) => {
    setMarkRead(settled.decimalMark ?? '');
    void read(
      next,
      settled.decimalMark === '.' || settled.decimalMark === ',' ? settled.decimalMark : undefined,
      false,
    );
  };
  return { file, progress, refused, problems, open };
}
