import { useState } from 'preact/hooks';
import { isoTime } from '../../kernel/time/iso-time.ts';
import { storageProblem } from '../../visit/storage/storage-problem.ts';
import type { Folder } from '../merge/sync.ts';
import { shopDatabase } from '../storage/shop-database.ts';
import { DeviceRefused } from '../storage/this-device.ts';
import { exchangeNotices, exchangeSentence, shopTexts, takenAwayNotices } from '../words.ts';
import { runExchange } from './run-exchange.ts';

export interface ExchangeState {
  running: boolean;
  sentence?: string;
  notices: string[];
  trouble?: string;
}

/** Runs exchanges, and says what each did. `open` gives the folder; undefined: it may not be used. */
export function useExchange(withWhat: 'folder' | 'files') {
  const [state, setState] = useState<ExchangeState>({ running: false, notices: [] });
  const run = async (open: () => Promise<Folder | undefined>, onDone: (at: string) => void = () => undefined) => {
    setState({ running: true, notices: [] });
    try {
      const folder = await open();
      if (folder === undefined) return setState({ running: false, notices: [], trouble: shopTexts.noPermission });
      const { report, after } = await runExchange(folder);
      const at = isoTime(new Date());
      await shopDatabase().noteExchange(at);
      onDone(at);
      const away = withWhat === 'files' ? takenAwayNotices(report, after.visits) : [];
      const notices = [...exchangeNotices(report, after.visits), ...away];
      setState({ running: false, sentence: exchangeSentence(report, withWhat), notices });
    } catch (error) {
      setState({ running: false, notices: [], trouble: troubleOf(error) });
    }
  };
  return { state, run };
}

/** What went wrong, and that nothing is lost by it. */
export function troubleOf(error: unknown): string {
  const name = error instanceof DOMException ? error.name : '';
  if (error instanceof DeviceRefused) return error.message;
  if (name === 'NotFoundError')
    return 'The folder or a file in it is gone. Nothing here was changed. Choose the folder again.';
  if (name === 'NoModificationAllowedError' || name === 'NotAllowedError') {
    return 'The folder may be read but not written. Nothing here was lost. Allow this page to write there, then exchange again.';
  }
  return storageProblem(error).message;
}
