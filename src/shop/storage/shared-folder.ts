import { limitValue } from '../../kernel/limits.ts';
import type { Folder } from '../merge/sync.ts';

/** What the File System Access API adds to the types that TypeScript knows. */
type FolderHandle = FileSystemDirectoryHandle & {
  queryPermission(options: { mode: 'readwrite' }): Promise<PermissionState>;
  requestPermission(options: { mode: 'readwrite' }): Promise<PermissionState>;
};

type Picker = (options: { id: string; mode: 'readwrite' }) => Promise<FolderHandle>;

const picker = (): Picker | undefined => (globalThis as { showDirectoryPicker?: Picker }).showDirectoryPicker;

/** Whether this browser can keep a folder open for a page: Chromium on a desktop system can, most tablets can't. */
export const canOpenFolders = (): boolean => picker() !== undefined;

/** Lets the person choose the folder; undefined if they change their mind. */
export async function chooseFolder(): Promise<FolderHandle | undefined> {
  try {
    return await picker()?.({ id: 'fieldbook-shop', mode: 'readwrite' });
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return undefined;
    throw error;
  }
}

export function isFolder(kept: unknown): kept is FolderHandle {
  return typeof kept === 'object' && kept !== null && (kept as { kind?: unknown }).kind === 'directory';
}

/** Whether the folder may be used. A browser forgets its permission; `ask` needs a tap of the person. */
export async function mayUse(folder: FolderHandle, ask: boolean): Promise<boolean> {
  const options = { mode: 'readwrite' } as const;
  if ((await folder.queryPermission(options)) === 'granted') return true;
  return ask && (await folder.requestPermission(options)) === 'granted';
}

/** Texts by name that did not change since they were read: most files of a folder do not. */
const read = new Map<string, { modified: number; size: number; text: string }>();

/** The chosen folder. Only JSON files are read, and none that is larger than everything of a shop may be. */
export function sharedFolder(handle: FolderHandle): Folder {
  const textOf = async (entry: FileSystemFileHandle): Promise<string | undefined> => {
    try {
      const file = await entry.getFile();
      const before = read.get(entry.name);
      if (before?.modified === file.lastModified && before.size === file.size) return before.text;
      if (file.size > limitValue('shop-file')) return undefined;
      const text = await file.text();
      read.set(entry.name, { modified: file.lastModified, size: file.size, text });
      return text;
    } catch {
      // A synchronising client may be replacing it at this moment.
      return undefined;
    }
  };
  return {
    async files() {
      const files: { name: string; text: string | undefined }[] = [];
      for await (const entry of handle.values()) {
        if (entry.kind !== 'file' || !entry.name.endsWith('.json')) continue;
        files.push({ name: entry.name, text: await textOf(entry as FileSystemFileHandle) });
      }
      return files;
    },
    async write(name, text) {
      const file = await handle.getFileHandle(name, { create: true });
      // The browser writes beside the file and exchanges the two at the end: whole or not at all.
      const stream = await file.createWritable();
      await stream.write(text);
      await stream.close();
    },
  };
}
