using DocumentFormat.OpenXml.Spreadsheet;

namespace FuelMath.Workbooks;

/// <summary>The formats of cells, one for each look, in the order of <see cref="CellLook"/>.</summary>
internal static class CellStyles
{
    private enum Face
    {
        Plain,
        Title,
        Bold,
        Italic,
    }

    private enum Shade
    {
        // The first two are reserved by the format.
        None,
        Reserved,
        Head,
        Input,
        Result,
        Solved,
    }

    /// <summary>Custom number formats have numbers from 164.</summary>
    private const uint FourPlaces = 164;

    internal static Stylesheet Make() =>
        new(
            new NumberingFormats(new NumberingFormat { NumberFormatId = FourPlaces, FormatCode = "0.0000" }),
            new Fonts(
                new Font(new FontSize { Val = 10 }, new FontName { Val = "Arial" }),
                new Font(new Bold(), new FontSize { Val = 14 }, new FontName { Val = "Arial" }),
                new Font(new Bold(), new FontSize { Val = 10 }, new FontName { Val = "Arial" }),
                new Font(new Italic(), new FontSize { Val = 9 }, new FontName { Val = "Arial" })
            ),
            new Fills(
                new Fill(new PatternFill { PatternType = PatternValues.None }),
                new Fill(new PatternFill { PatternType = PatternValues.Gray125 }),
                Solid("FFE3E6EA"),
                Solid("FFFFF4CC"),
                Solid("FFDDEEDD"),
                Solid("FFEDEDED")
            ),
            new Borders(
                new Border(
                    new LeftBorder(),
                    new RightBorder(),
                    new TopBorder(),
                    new BottomBorder(),
                    new DiagonalBorder()
                )
            ),
            new CellStyleFormats(new CellFormat()),
            new CellFormats(Enum.GetValues<CellLook>().Select(Format))
        );

    private static CellFormat Format(CellLook look) =>
        look switch
        {
            CellLook.Title => Of(Face.Title, Shade.None, false),
            CellLook.Head => Of(Face.Bold, Shade.Head, true),
            CellLook.Input => Of(Face.Plain, Shade.Input, false),
            CellLook.Result => Of(Face.Bold, Shade.Result, false),
            CellLook.Note => Of(Face.Italic, Shade.None, false),
            CellLook.Solved => Rounded(Face.Italic, Shade.Solved),
            CellLook.Live => Rounded(Face.Plain, Shade.None),
            CellLook.LiveResult => Rounded(Face.Bold, Shade.Result),
            CellLook.Words => Of(Face.Plain, Shade.None, true),
            _ => Of(Face.Plain, Shade.None, false),
        };

    /// <summary>Shown with four decimals; the cell keeps all digits.</summary>
    private static CellFormat Rounded(Face face, Shade shade)
    {
        CellFormat format = Of(face, shade, false);
        (format.NumberFormatId, format.ApplyNumberFormat) = (FourPlaces, true);
        return format;
    }

    private static CellFormat Of(Face face, Shade shade, bool wrap) =>
        new(new Alignment { WrapText = wrap, Vertical = VerticalAlignmentValues.Top })
        {
            FontId = (uint)face,
            FillId = (uint)shade,
            BorderId = 0,
            FormatId = 0,
            ApplyFont = true,
            ApplyFill = true,
            ApplyAlignment = true,
        };

    private static Fill Solid(string color) =>
        new(
            new PatternFill(new ForegroundColor { Rgb = color }, new BackgroundColor { Indexed = 64 })
            {
                PatternType = PatternValues.Solid,
            }
        );
}
