using System.Text.Json.Nodes;
using Silkwright.Artwork;
using Silkwright.Contracts;
using Silkwright.Plans;

namespace Silkwright.Film.Tests.Measuring.Layout;

/// <summary>Films drawn with a known mistake; the oracle is the mistake drawn.</summary>
public class FilmsOfOneJobTests
{
    private const string Base = JobFilms.Marks + "," + JobFilms.Heron;
    private const string Moon = JobFilms.Marks + "," + JobFilms.Moon;

    private static readonly FilmMeasurement Right = JobFilms.Draw(Base, "base.tif");

    [Fact]
    public void Films_that_agree_are_silent()
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(Moon, "moon.tif")]);
        Assert.Empty(together.Remarks);
        Assert.True(together.SameSize);
        Assert.True(together.SameDpi);
        Assert.Empty(together.MirroredOrDuplicate);
        Assert.InRange(Assert.Single(together.Register).Offset.MostMm, 0, 0.01);
    }

    [Theory]
    [InlineData(0.05, 0)]
    [InlineData(0.3, -0.2)]
    [InlineData(-1.7, 0.6)]
    [InlineData(0, -3)]
    public void A_shift_is_told_to_a_tenth_of_a_millimetre(double x, double y)
    {
        var offset = Assert.Single(FilmDocument.Together([Right, JobFilms.Draw(Moon, "moon.tif", placed: (0, x, y))]).Register).Offset;
        Assert.Equal(x, offset.XMm, 0.05);
        Assert.Equal(y, offset.YMm, 0.05);
        Assert.Equal(4, offset.Marks);
        Assert.Equal(0, offset.TurnDegrees, 0.02);
    }

    /// <summary>A positive turn of the drawing is clockwise about the film's origin; the middle of the marks, (100, 70), moves with it.</summary>
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.1)]
    [InlineData(-0.2)]
    [InlineData(0.3)]
    [InlineData(-0.5)]
    [InlineData(1)]
    public void A_turn_is_told_with_where_it_carries_the_middle(double degrees)
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(Moon, "moon.tif", placed: (degrees, 0, 0))]);
        var offset = Assert.Single(together.Register).Offset;
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        Assert.Equal(4, offset.Marks);
        Assert.Equal(-degrees, offset.TurnDegrees, 0.02);
        Assert.Equal((100 * cos) - (70 * sin) - 100, offset.XMm, 0.05);
        Assert.Equal((100 * sin) + (70 * cos) - 70, offset.YMm, 0.05);
        Assert.Contains(together.Remarks, remark => remark.Contains(degrees > 0 ? " clockwise" : "counter-clockwise", StringComparison.Ordinal));
    }

    /// <summary>The film is moved by 0.5 mm, and a row of letters X by 7 mm: all of them read as marks.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Letters_that_read_as_marks_and_moved_take_no_part(int letters)
    {
        var first = WithMarks("one.tif", [(100, 6), (10, 70), (190, 70), (100, 134), .. Row(0)]);
        var second = WithMarks("two.tif", [(100.5, 6), (10.5, 70), (190.5, 70), (100.5, 134), .. Row(-7)]);
        var offset = Assert.Single(FilmDocument.Together([first, second]).Register).Offset;
        Assert.Equal((4, 0.5, 0, 0, 0), (offset.Marks, Math.Round(offset.XMm, 6), Math.Round(offset.YMm, 6), Math.Round(offset.TurnDegrees, 6), Math.Round(offset.StretchPercent, 6)));

        (double X, double Y)[] Row(double down) => [.. Enumerable.Range(0, letters).Select(i => (40 + (9.0 * i), 125 + down))];
    }

    [Fact]
    public void One_mark_that_lies_elsewhere_tells_no_turn_and_may_be_artwork()
    {
        var together = FilmDocument.Together([WithMarks("one.tif", [(20, 20)]), WithMarks("two.tif", [(25, 32)])]);
        var told = Assert.Single(together.Remarks, remark => remark.Contains("13.00 mm", StringComparison.Ordinal));
        Assert.Contains("may be artwork", told, StringComparison.Ordinal);
        Assert.DoesNotContain("output the film again", told, StringComparison.Ordinal);
    }

    /// <summary>Upside down in the mirror is the wrong side up and half a turn.</summary>
    [Fact]
    public void A_film_mirrored_top_to_bottom_has_the_wrong_side_up_too()
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(Base, "mirrored.tif", placed: (180, 200, 140), mirrored: true)]);
        Assert.Equal(FilmTurn.MirroredTopToBottom, Assert.Single(together.MirroredOrDuplicate).Resemblance.Turn);
        Assert.DoesNotContain("No two", ReadingSide.Of(together), StringComparison.Ordinal);
    }

    private static FilmMeasurement WithMarks(string file, IEnumerable<(double X, double Y)> marks) =>
        Right with { File = file, Layout = Right.Layout! with { Marks = [.. marks.Select(mark => new RegisterMark(mark.X, mark.Y, 8))] } };

    [Fact]
    public void A_film_read_at_a_wrong_resolution_differs_in_size_and_stands_stretched()
    {
        var wrong = Right with { File = "wrong.tif", Dpi = 606, Layout = Right.Layout! with { Marks = [.. Right.Layout!.Marks.Select(m => m with { XMm = m.XMm / 1.01, YMm = m.YMm / 1.01 })] } };
        var together = FilmDocument.Together([Right, wrong]);
        Assert.False(together.SameSize);
        Assert.False(together.SameDpi);
        Assert.Equal(100 * ((1 / 1.01) - 1), Assert.Single(together.Register).Offset.StretchPercent, 0.02);
    }

    [Fact]
    public void The_same_artwork_at_another_resolution_lies_on_it()
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(Moon, "moon.tif", dpi: 900)]);
        Assert.False(together.SameDpi);
        Assert.InRange(Assert.Single(together.Register).Offset.MostMm, 0, 0.05);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.9, 1.1)]
    [InlineData(-7, 3)]
    public void A_doubled_film_is_named_however_it_is_shifted(double x, double y)
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(Moon, "moon.tif"), JobFilms.Draw(Base, "again.tif", placed: (0, x, y))]);
        var pair = Assert.Single(together.MirroredOrDuplicate);
        Assert.Equal(("base.tif", "again.tif", FilmTurn.None, ResemblanceGround.SameImage), (pair.First, pair.Second, pair.Resemblance.Turn, pair.Resemblance.Ground));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1.3, -2.1)]
    public void A_mirrored_copy_is_named(double x, double y)
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(Base, "mirrored.tif", placed: (0, x, y), mirrored: true)]);
        Assert.Equal(FilmTurn.Mirrored, Assert.Single(together.MirroredOrDuplicate).Resemblance.Turn);
        Assert.Contains(together.Remarks, remark => remark.Contains("mirrored left to right", StringComparison.Ordinal));
    }

    /// <summary>A film that is its own mirror image doubled is doubled, not mirrored.</summary>
    [Fact]
    public void An_even_image_twice_is_doubled()
    {
        var even = JobFilms.Draw("""{"disc":[100,70,30]}""", "one.tif");
        Assert.Equal(FilmTurn.None, Assert.Single(FilmDocument.Together([even, JobFilms.Draw("""{"disc":[100,70,30]}""", "two.tif")]).MirroredOrDuplicate).Resemblance.Turn);
    }

    [Fact]
    public void Another_colour_mirrored_is_known_by_marks_that_stand_unevenly()
    {
        const string Uneven = """{"register":[20,8,4]},{"register":[8,40,4]},{"register":[192,100,4]},{"register":[150,132,4]},""";
        var pair = Assert.Single(FilmDocument.Together([JobFilms.Draw(Uneven + JobFilms.Heron, "base.tif"), JobFilms.Draw(Uneven + JobFilms.Moon, "moon.tif", mirrored: true)]).MirroredOrDuplicate);
        Assert.Equal((FilmTurn.Mirrored, ResemblanceGround.Marks), (pair.Resemblance.Turn, pair.Resemblance.Ground));
        Assert.Empty(FilmDocument.Together([JobFilms.Draw(Uneven + JobFilms.Heron, "base.tif"), JobFilms.Draw(Uneven + JobFilms.Moon, "moon.tif")]).MirroredOrDuplicate);
    }

    [Fact]
    public void A_colour_that_misses_its_underbase_unless_mirrored_is_named()
    {
        var ground = JobFilms.Draw("""{"rect":[20,30,70,80]}""", "base.tif");
        var colour = """{"disc":[50,60,15]},{"rect":[30,85,20,8]}""";
        var pair = Assert.Single(FilmDocument.Together([ground, JobFilms.Draw(colour, "red.tif", mirrored: true)]).MirroredOrDuplicate);
        Assert.Equal((FilmTurn.Mirrored, ResemblanceGround.Cover), (pair.Resemblance.Turn, pair.Resemblance.Ground));
        Assert.Empty(FilmDocument.Together([ground, JobFilms.Draw(colour, "red.tif")]).MirroredOrDuplicate);
    }

    [Fact]
    public void Films_of_other_sizes_and_films_without_marks_are_named_with_a_remedy()
    {
        var together = FilmDocument.Together([Right, JobFilms.Draw(JobFilms.Moon, "moon.tif", width: 210)]);
        Assert.False(together.SameSize);
        Assert.Contains(together.Remarks, remark => remark.Contains("210.0 x 140.0 mm", StringComparison.Ordinal));
        Assert.Contains(together.Remarks, remark => remark.Contains("No register marks were found on moon.tif", StringComparison.Ordinal));
    }

    /// <summary>75 mm beside the artwork, which is 80 x 50 mm: a frame of 230 x 200 mm is the least. The marks may be taped over.</summary>
    [Theory]
    [InlineData(232, 202, true)]
    [InlineData(228, 202, false)]
    [InlineData(232, 198, false)]
    public void The_image_lies_inside_a_frame_with_room_for_the_squeegee(double width, double height, bool fits)
    {
        var film = JobFilms.Draw(JobFilms.Marks + """,{"rect":[60,40,80,50]}""", "a.tif");
        var together = FilmDocument.Together([film], new Frame { InsideWidthMm = width, InsideHeightMm = height });
        Assert.Equal(fits, together.FitsFrame);
        Assert.Equal(fits, together.Remarks.Count == 0);
    }

    [Fact]
    public void The_document_has_the_fields_that_the_contract_names()
    {
        var job = FilmDocument.Of([(Right, null), (JobFilms.Draw(Base, "again.tif"), null)], new Frame { InsideWidthMm = 500, InsideHeightMm = 500 })["job"]!.AsObject();
        Assert.All(["sameSize", "sameDpi", "registerOffsetsMm", "mirroredOrDuplicate", "fitsFrame", "remarks"], name => Assert.True(job.ContainsKey(name), name));
        Assert.Equal("duplicate", (string?)job["mirroredOrDuplicate"]![0]!["kind"]);
        Assert.Equal("again.tif", (string?)((JsonArray)job["registerOffsetsMm"]!)[0]!["file"]);
    }
}
