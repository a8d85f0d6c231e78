import { useEffect, useState } from 'preact/hooks';
import { shownTime } from '../../kernel/time/iso-time.ts';
import { canOpenFolders, chooseFolder, isFolder, mayUse, sharedFolder } from '../storage/shared-folder.ts';
import { shopDatabase } from '../storage/shop-database.ts';
import { shopTexts } from '../words.ts';
import { ExchangeResult } from './ExchangeResult.tsx';
import { useExchange } from './use-exchange.ts';

type Chosen = NonNullable<Awaited<ReturnType<typeof chooseFolder>>>;

/** The shared folder: chosen once, exchanged at a tap, and by itself while the visits are open. */
export function FolderPart() {
  const [folder, setFolder] = useState<Chosen>();
  const [allowed, setAllowed] = useState(true);
  const [last, setLast] = useState<string>();
  const { state, run } = useExchange('folder');
  const shop = shopDatabase();

  useEffect(() => {
    void (async () => {
      const kept = await shop.folder().catch(() => undefined);
      if (!isFolder(kept)) return;
      setFolder(kept);
      setAllowed(await mayUse(kept, false));
      setLast(await shop.exchangedAt());
    })();
  }, []);

  const exchangeWith = (handle: Chosen) =>
    run(async () => {
      if (!(await mayUse(handle, true))) return undefined;
      setAllowed(true);
      return sharedFolder(handle);
    }, setLast);
  const choose = async () => {
    const handle = await chooseFolder();
    if (handle === undefined) return;
    await shop.chooseFolder(handle);
    setFolder(handle);
    await exchangeWith(handle);
  };

  if (!canOpenFolders()) return <p>{shopTexts.noFolder}</p>;
  return (
    <>
      <p>{shopTexts.folderHint}</p>
      {folder && (
        <p>
          <b>{folder.name}</b>
          {last !== undefined && `, last exchange ${shownTime(last)}`}. {!allowed && shopTexts.noPermission}
        </p>
      )}
      <p class="banner-actions">
        {folder && (
          <button type="button" class="primary" disabled={state.running} onClick={() => void exchangeWith(folder)}>
            Exchange now
          </button>
        )}
        <button type="button" class={folder ? 'plain' : 'primary'} onClick={() => void choose()}>
          {folder ? 'Choose another folder' : 'Choose the folder'}
        </button>
      </p>
      <ExchangeResult state={state} />
    </>
  );
}
