/** Whether commas of this text stand before decimals: "8,3" is seen and no "8.3" that shows the other way. */
export function commaIsDecimal(text: string): boolean {
  const isComma = /(?<![\d,.])(?:\d+,\d{1,2}|0,\d{3})(?![\d,])/.test(text);
  const isPoint = /(?<![\d,.])\d+\.\d{1,2}(?![\d.])/.test(text);
  return isComma && !isPoint;
}

/** A written number as a plain decimal; marks of thousands go. "1,350" 1350, "8,3" 8.3, "1.234,5" 1234.5. */
export function plainNumber(written: string, isCommaDecimal: boolean): string {
  const commas = written.split(',').length - 1;
  const points = written.split('.').length - 1;
  if (commas === 0 && points <= 1) {
    const isGrouped =
      isCommaDecimal && /^[1-9]\d{0,2}\.\d{3}$/.test(written) && !/^1\.0[0-4]\d$/.test(written);
    return isGrouped ? written.replace('.', '') : written;
  }
  if (commas > 0 && points > 0) {
    const isPointLast = written.lastIndexOf('.') > written.lastIndexOf(',');
    return isPointLast ? written.replaceAll(',', '') : written.replaceAll('.', '').replace(',', '.');
  }
  if (commas === 1) {
    const isThousands = /^[1-9]\d{0,2},\d{3}$/.test(written) && !/^1,0[0-4]\d$/.test(written);
    return isThousands ? written.replace(',', '') : written.replace(',', '.');
  }
  return written.replaceAll(',', '').replace(/\.(?=.*\.)/g, '');
}
