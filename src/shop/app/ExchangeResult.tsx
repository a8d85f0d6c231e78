import type { ExchangeState } from './use-exchange.ts';

/** What the last exchange did, and what a person has to look at. */
export function ExchangeResult({ state: { running, sentence, notices, trouble } }: { state: ExchangeState }) {
  return (
    <>
      <p role="status" class="list-message">
        {running ? 'Exchanging …' : sentence}
      </p>
      <div role="alert" class="shop-notices">
        {trouble && <p>{trouble}</p>}
        {notices.length > 0 && (
          <ul>
            {notices.map((notice) => (
              <li key={notice}>{notice}</li>
            ))}
          </ul>
        )}
      </div>
    </>
  );
}
