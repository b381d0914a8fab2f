export declare const LAUNCH_ARGS: string[];
export declare const findChromium: () => string;
