// Writes one small book with each of several writers, so that the reader is tested against files that
// others really wrote. Run: npm install && node write-books.js
const path = require('path');
const out = path.join(__dirname, '..', 'resources', 'clenchbook', 'workbook', 'npm');
const at = (name) => path.join(out, name);

const headings = ['Date', 'Owner', 'Horse', 'Work', 'Size', 'Total min', 'Charge', 'Notes'];
const first = new Date(Date.UTC(2026, 2, 14));
const second = new Date(Date.UTC(2026, 2, 15));
const third = new Date(Date.UTC(2026, 2, 16));
const minutes45 = 45 / 1440;

async function exceljs() {
  const ExcelJS = require('exceljs');
  const fill = (book) => {
    const visits = book.addWorksheet('Visits');
    visits.addRow(['My visits']).commit();
    visits.addRow(headings).commit();
    const add = (cells) => {
      const row = visits.addRow(cells);
      row.getCell(1).numFmt = 'dd/mm/yyyy';
      if (cells[5] === minutes45) row.getCell(6).numFmt = 'h:mm';
      row.commit();
    };
    add([first, 'Ann', 'Bramble', 'Full set', '0: 2; 00: 2', minutes45, 85.1, { richText: [{ text: 'Zoë & ' }, { font: { bold: true }, text: '<co>' }] }]);
    add([second, 'Ann', 'Rosie', 'Trim', 0, 20, { formula: '45*2', result: 90 }, '']);
    add([third, 'Ann', 'Jack', 'Trim', null, null, { formula: '45*3' }, '']);
    const settings = book.addWorksheet('Settings');
    settings.addRow(['Setting', 'Value']).commit();
    settings.addRow(['Currency', 'GBP']).commit();
    return [visits, settings];
  };
  const whole = new ExcelJS.Workbook();
  fill(whole);
  await whole.xlsx.writeFile(at('exceljs.xlsx'));
  const since1904 = new ExcelJS.Workbook();
  since1904.properties.date1904 = true;
  fill(since1904);
  await since1904.xlsx.writeFile(at('exceljs-1904.xlsx'));
  const streamed = new ExcelJS.stream.xlsx.WorkbookWriter({ filename: at('exceljs-streamed.xlsx'), useStyles: true, useSharedStrings: false });
  fill(streamed).forEach((sheet) => sheet.commit());
  await streamed.commit();
}

function sheetjs() {
  const XLSX = require('xlsx');
  const serial = (date) => date.getTime() / 86400000 + 25569;
  const cell = (value, format) => (value === null ? undefined : typeof value === 'number' ? { t: 'n', v: value, z: format } : { t: 's', v: value });
  const visits = {};
  const rows = [
    ['My visits'],
    headings,
    [[serial(first), 'dd/mm/yyyy'], 'Ann', 'Bramble', 'Full set', '0: 2; 00: 2', [minutes45, 'h:mm'], 85.1, 'Zoë & <co>'],
    [[serial(second), 'dd/mm/yyyy'], 'Ann', 'Rosie', 'Trim', 0, 20, { t: 'n', f: '45*2', v: 90 }, null],
    [[serial(third), 'dd/mm/yyyy'], 'Ann', 'Jack', 'Trim', null, null, { t: 'n', f: '45*3' }, null],
  ];
  rows.forEach((row, r) => row.forEach((value, c) => {
    const made = Array.isArray(value) ? cell(value[0], value[1]) : value && value.t ? value : cell(value);
    if (made) visits[XLSX.utils.encode_cell({ r, c })] = made;
  }));
  visits['!ref'] = 'A1:H5';
  const book = XLSX.utils.book_new();
  XLSX.utils.book_append_sheet(book, visits, 'Visits');
  XLSX.utils.book_append_sheet(book, XLSX.utils.aoa_to_sheet([['Setting', 'Value'], ['Currency', 'GBP']]), 'Settings');
  XLSX.writeFile(book, at('sheetjs.xlsx'));
  XLSX.writeFile(book, at('sheetjs-shared.xlsx'), { bookSST: true, compression: true });
  XLSX.writeFile(book, at('sheetjs.xls'), { bookType: 'biff8' });
  XLSX.writeFile(book, at('sheetjs.ods'), { bookType: 'ods' });
}

async function populate() {
  const XlsxPopulate = require('xlsx-populate');
  const book = await XlsxPopulate.fromBlankAsync();
  const visits = book.sheet(0).name('Visits');
  visits.cell('A1').value('My visits');
  visits.cell('A2').value([headings]);
  const day = (date) => XlsxPopulate.dateToNumber(new Date(date.getUTCFullYear(), date.getUTCMonth(), date.getUTCDate()));
  visits.cell('A3').value([[day(first), 'Ann', 'Bramble', 'Full set', '0: 2; 00: 2', minutes45, 85.1, 'Zoë & <co>']]);
  visits.cell('A4').value([[day(second), 'Ann', 'Rosie', 'Trim', 0, 20, 90]]);
  visits.cell('A5').value([[day(third), 'Ann', 'Jack', 'Trim']]);
  visits.cell('G5').formula('45*3');
  ['A3', 'A4', 'A5'].forEach((cell) => visits.cell(cell).style('numberFormat', 'dd/mm/yyyy'));
  visits.cell('F3').style('numberFormat', 'h:mm');
  book.addSheet('Settings').cell('A1').value([['Setting', 'Value'], ['Currency', 'GBP']]);
  await book.toFileAsync(at('xlsx-populate.xlsx'));
  await book.toFileAsync(at('xlsx-populate-locked.xlsx'), { password: 'hoof' });
}

async function excel4node() {
  const xl = require('excel4node');
  const book = new xl.Workbook();
  const visits = book.addWorksheet('Visits');
  const day = book.createStyle({ numberFormat: 'dd/mm/yyyy' });
  const clock = book.createStyle({ numberFormat: 'h:mm' });
  visits.cell(1, 1).string('My visits');
  headings.forEach((heading, i) => visits.cell(2, i + 1).string(heading));
  const names = [['Bramble', 'Full set'], ['Rosie', 'Trim'], ['Jack', 'Trim']];
  [first, second, third].forEach((date, i) => {
    visits.cell(3 + i, 1).number(date.getTime() / 86400000 + 25569).style(day);
    visits.cell(3 + i, 2).string('Ann');
    visits.cell(3 + i, 3).string(names[i][0]);
    visits.cell(3 + i, 4).string(names[i][1]);
  });
  visits.cell(3, 5).string('0: 2; 00: 2');
  visits.cell(3, 6).number(minutes45).style(clock);
  visits.cell(3, 7).number(85.1);
  visits.cell(3, 8).string('Zoë & <co>');
  visits.cell(4, 5).number(0);
  visits.cell(4, 6).number(20);
  visits.cell(4, 7).number(90);
  visits.cell(5, 7).formula('45*3');
  const settings = book.addWorksheet('Settings');
  [['Setting', 'Value'], ['Currency', 'GBP']].forEach((row, r) => row.forEach((text, c) => settings.cell(r + 1, c + 1).string(text)));
  await new Promise((done, failed) => book.write(at('excel4node.xlsx'), (error) => (error ? failed(error) : done())));
}

(async () => {
  await exceljs();
  sheetjs();
  await populate();
  await excel4node();
})();
