import { useState } from 'preact/hooks';
import { download } from '../../../visit/app/download.ts';
import { exportedSheets } from './exported-sheets.ts';
import type { DrawnSheet, SectionQuestions } from './section-sheets.ts';

interface Props {
  section: SectionQuestions;
  draw: number;
  sheets: readonly DrawnSheet[];
}

/** The sheets with their answers as files for other programs. */
export function ExportPart({ section, draw, sheets }: Props) {
  const [trouble, setTrouble] = useState('');
  const name = `${section.section}-draw-${draw}`;
  const save = async (make: () => Promise<Parameters<typeof download>[0]>) => {
    setTrouble('');
    await make().then(download, () =>
      setTrouble('The part that writes this file did not load. Load the page again, with a network if it is missing.'),
    );
  };
  const csv = async () => {
    const { questionsCsv } = await import('../../exercises/export/questions-csv.ts');
    return { name: `${name}.csv`, text: questionsCsv(exportedSheets(section, draw, sheets)) };
  };
  const qti = async () => {
    const { qtiPackage } = await import('../../exercises/export/qti-package.ts');
    const text = qtiPackage(name, section.title, exportedSheets(section, draw, sheets));
    return { name: `${name}.zip`, text };
  };
  return (
    <div class="sheet-order">
      <p>
        For a learning system or a spreadsheet, with the answers. A verdict or a figure that a question asks for can be
        scored by the system; a person reads the reasons.
      </p>
      <p>
        <button type="button" class="plain" onClick={() => void save(qti)}>
          Save as IMS QTI 3.0 package
        </button>{' '}
        <button type="button" class="plain" onClick={() => void save(csv)}>
          Save as CSV
        </button>
      </p>
      <p role="status">{trouble}</p>
    </div>
  );
}
