import { isObject } from '../../kernel/link/parse-json.ts';

/** What another tab did to a visit. */
export interface VisitChange {
  id: string;
  change: 'saved' | 'removed';
}

export interface VisitChanges {
  tell(change: VisitChange): void;
  /** Hears what other tabs do, not this one. Returns what ends it. */
  listen(listener: (change: VisitChange) => void): () => void;
  close(): void;
}

/** The one channel on which tabs of this site tell each other of changes. A browser without it hears nothing. */
export function visitChanges(name = 'overcurrent-fieldbook-visits'): VisitChanges {
  const channel = open(name);
  return {
    tell: (change) => channel?.postMessage(change),
    listen(listener) {
      const hear = ({ data }: MessageEvent<unknown>) => {
        if (isChange(data)) listener(data);
      };
      channel?.addEventListener('message', hear);
      return () => channel?.removeEventListener('message', hear);
    },
    close: () => channel?.close(),
  };
}

function open(name: string): BroadcastChannel | undefined {
  try {
    return new BroadcastChannel(name);
  } catch {
    return undefined;
  }
}

function isChange(data: unknown): data is VisitChange {
  return isObject(data) && typeof data.id === 'string' && (data.change === 'saved' || data.change === 'removed');
}
