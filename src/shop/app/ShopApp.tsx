import { href } from '../../ui/href.ts';
import { shopTexts } from '../words.ts';
import { FilesPart } from './FilesPart.tsx';
import { FolderPart } from './FolderPart.tsx';

/** The page of a shop with several tablets. */
export function ShopApp() {
  return (
    <>
      <h1 tabIndex={-1}>Several tablets</h1>
      <p class="lead">{shopTexts.lead}</p>
      <section aria-labelledby="folder">
        <h2 id="folder">Shared folder</h2>
        <FolderPart />
      </section>
      <section aria-labelledby="files">
        <h2 id="files">Everything as one file</h2>
        <FilesPart />
      </section>
      <p>
        For other programs: <a href={href('/schema/shop-1.json')}>format of these files</a> and{' '}
        <a href={href('/schema/visit-1.json')}>format of a visit</a>, as JSON Schema.
      </p>
    </>
  );
}
