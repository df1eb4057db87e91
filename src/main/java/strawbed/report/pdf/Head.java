package strawbed.report.pdf;

/** The head of a card: number, who the calf is, square code. */
interface Head {
    /** The least height that it can be laid out in, with its code's white border above whatever comes under it. */
    double least(double whiteBelow);

    /** The height in which all of it is as large as it is wanted. */
    double wanted();

    /** Within this height, which is the least or more. */
    Block lay(double height);
}
