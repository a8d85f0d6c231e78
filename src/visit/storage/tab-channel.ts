import { isObject } from '../../kernel/link/parse-json.ts';

/** What another tab did to a visit. */
export interface VisitChange {
  id: string;
  change: 'saved' | 'removed' | 'photographs';
}

export interface TabChannel {
  announce(change: VisitChange): void;
  /** Calls `listener` for changes by other tabs, not by this one. Returns the function that stops this. */
  listen(listener: (change: VisitChange) => void): () => void;
  close(): void;
}

/** The channel by which the tabs of this site announce changes. Without BroadcastChannel it does nothing. */
export function tabChannel(name = 'overcurrent-fieldbook-visits'): TabChannel {
  const channel = open(name);
  return {
    announce: (change) => channel?.postMessage(change),
    listen(listener) {
      const receive = ({ data }: MessageEvent<unknown>) => {
        if (isChange(data)) listener(data);
      };
      channel?.addEventListener('message', receive);
      return () => channel?.removeEventListener('message', receive);
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
  return (
    isObject(data) &&
    typeof data.id === 'string' &&
    (data.change === 'saved' || data.change === 'removed' || data.change === 'photographs')
  );
}
