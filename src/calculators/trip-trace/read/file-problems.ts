import type { SettingsProblem } from './settings.ts';
import type { LineRemark, ReadProblem } from './trace-table.ts';

/** Why a file can't be read, and what to do. Nothing of the form is lost. */
export const fileProblems: Record<ReadProblem, string> = {
  empty: 'The file is empty. Export the recording again, and look at its size before you copy it.',
  spreadsheet: 'This is a spreadsheet file. Open it in the spreadsheet and save the sheet as CSV.',
  compressed: 'This file is compressed. Unpack it, then choose the CSV file in it.',
  pdf: 'This is a PDF. Export the recording as CSV; figures can’t be read from a printed curve.',
  picture: 'This is a picture. Export the recording as CSV; figures can’t be read from a picture.',
  'web-page': 'This is a page or an XML file. Export the recording as CSV.',
  json: 'This is a JSON file. Export the recording as CSV.',
  binary: 'This is not text: a recorder’s own format. Open it in the recorder’s program and export it as CSV.',
  'too-large': 'The file is too large for this device. Cut it to the seconds around the trip, then export it again.',
  'no-numbers':
    'No table of numbers was found. A trace has one row for each sample and the same number of cells in each row.',
  'one-column': 'There is only one column of numbers. A trace needs at least two phase currents side by side.',
  'commas-both-ways':
    'A comma separates the cells and is the decimal mark too, so that the figures are torn apart. Export again with a semicolon or a tab between the cells.',
  'marks-mixed': 'Some figures have a decimal comma and some a point. Say below which of them is the decimal mark.',
  'too-many-columns':
    'There are more columns than a recorder has signals. Perhaps rows and columns are exchanged: export one row for each sample.',
  'too-many-rows':
    'There are more rows than this page takes. Cut the recording to the seconds around the trip; nothing was left out silently.',
  'quote-not-closed': 'A quotation mark is not closed, so that the rows after it can’t be told apart.',
  'line-too-long':
    'A line is longer than any row of a recording: the file is damaged, or its signals stand in rows. Export it again, with one row for each sample.',
  'too-few-rows': 'There are too few rows with numbers for a trace. Was the export cut short?',
};

export const lineRemarks: Record<LineRemark, string> = {
  'cells-missing': 'has fewer cells than the others',
  'cells-too-many': 'has more cells than the others',
  'not-a-number': 'has a cell that is no number',
  'second-recording': 'begins another recording; only the first one is read',
};

export const settingsProblems: Record<SettingsProblem, string> = {
  'column-missing': 'Say which column this is. Two phase currents are needed at least.',
  'column-taken': 'This column is already taken for something else.',
  'unit-missing': 'Say the unit: the file does not state it, or not clearly.',
  'time-not-rising':
    'The values of this column do not rise. Choose the column of the time, or none and state the sample time.',
  'time-too-coarse':
    'Many rows have the same time: the clock is coarser than the samples. Choose “samples” as its unit and state the sample time.',
  'sample-time-missing': 'State the time from one sample to the next, such as 0.125 ms.',
  'scale-missing': 'State what full scale is in amperes.',
  'not-a-figure': 'This is not a figure that can be read, such as 12.5.',
  'outside-the-file': 'This moment is not in the file. Look at its first and last time.',
  'no-values': 'This column has no values that can be used.',
};
