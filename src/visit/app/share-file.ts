import type { ExportedFile } from '../record/export-visit.ts';

/**
 * As text and named so: the share sheets of some systems refuse a file of JSON. The import takes either name.
 */
function sharedFile({ name, text }: ExportedFile): File {
  return new File([text], name.replace(/\.json$/, '.txt'), { type: 'text/plain' });
}

/** Whether this browser hands files to the share sheet of the system. */
export function canShareFiles(): boolean {
  return navigator.canShare?.({ files: [sharedFile({ name: 'visit.json', text: '{}' })] }) ?? false;
}

/** Opens the share sheet; call it from a press. `refused`: the system did not take the file. */
export async function shareFile(file: ExportedFile): Promise<'handed-over' | 'cancelled' | 'refused'> {
  try {
    await navigator.share({ files: [sharedFile(file)], title: file.name.replace(/\.json$/, '') });
    return 'handed-over';
  } catch (error) {
    return error instanceof DOMException && error.name === 'AbortError' ? 'cancelled' : 'refused';
  }
}
