// The package has no types of its own.
declare module 'nspell' {
  interface Speller {
    correct(word: string): boolean;
    suggest(word: string): string[];
  }
  export default function nspell(dictionary: { aff: Uint8Array; dic: Uint8Array }): Speller;
}
