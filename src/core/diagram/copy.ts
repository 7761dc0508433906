/**
 * A copy of plain data, without keys that are undefined. Commands lay copies into the draft: a later command of the
 * same step may change them, and the arguments must stay as they were for the next run.
 */
export const copyOf = <Data>(data: Data): Data => JSON.parse(JSON.stringify(data)) as Data;
